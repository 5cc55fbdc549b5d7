import type { Catalog } from '../../catalog/catalog.ts';
import { hull, type Interval, isExact } from '../../quantities/interval.ts';
import type { Family } from '../arranging/family.ts';
import type { CurvePoint, Envelope, SizeCost } from '../decision.ts';
import { corners } from '../facts/corners.ts';
import { bounded } from '../judging/value.ts';

interface Sized {
  readonly family: Family;
  readonly swing: Interval;
}

/**
 * The coverage curve: which share of the five-axis hours a swing holds as it grows. Size is chosen at the
 * knee, the smallest swing beyond which every further family adds less than `kneeShare` of the hours; a
 * family that the choice must hold is always inside. No knee where an unknown size or hours decide it.
 */
export function envelopeOf(families: readonly Family[], catalog: Catalog, kneeShare: number): Envelope {
  const sized = families
    .map((family) => ({ family, swing: turningDiameter(family) }))
    .sort((a, b) => a.swing.high - b.swing.high || a.swing.low - b.swing.low || compareNames(a, b));
  const last = lastInside(sized, kneeShare);
  const known = sized.every(({ family, swing }) => isExact(swing) && isExact(family.hours));
  const knee = known ? (sized[last]?.swing.high ?? null) : null;
  const largest = sized.at(-1)?.swing;
  return {
    curve: sized.map(
      ({ family, swing }, index): CurvePoint => ({
        part: family.name,
        swing: bounded(swing),
        hours: bounded(family.hours),
        share: bounded(shareUpTo(sized, index)),
        beyondKnee: known && index > last,
      }),
    ),
    knee,
    atKnee: knee === null ? null : smallestWith(catalog, knee),
    forAll: largest === undefined || !isExact(largest) ? null : smallestWith(catalog, largest.high),
  };
}

const compareNames = (a: Sized, b: Sized): number => (a.family.name < b.family.name ? -1 : 1);

/** 2·max(r + e, F/2), over every kind that the answers leave open. */
export const turningDiameter = ({ cases }: Family): Interval =>
  hull(
    cases.map((of) =>
      corners([of.planRadius, of.eccentricity, of.fixtureDiameter], ([r = 0, e = 0, fixture = 0]) =>
        Math.max(2 * (r + e), fixture),
      ),
    ),
  );

/** The last family that must be inside: it adds enough hours, or it has to be held. */
function lastInside(sized: readonly Sized[], kneeShare: number): number {
  const total = sized.reduce((sum, { family }) => sum + family.hours.high, 0);
  return sized.findLastIndex(({ family }) => family.must || family.hours.high / total >= kneeShare);
}

function shareUpTo(sized: readonly Sized[], index: number): Interval {
  const sum = (from: readonly Sized[], end: 'low' | 'high'): number =>
    from.reduce((hours, { family }) => hours + family.hours[end], 0);
  const [inside, outside] = [sized.slice(0, index + 1), sized.slice(index + 1)];
  const share = (covered: number, rest: number): number => (rest === 0 ? 1 : covered / (covered + rest));
  return {
    low: share(sum(inside, 'low'), sum(outside, 'high')),
    high: share(sum(inside, 'high'), sum(outside, 'low')),
  };
}

/** The tilting rotary or built-in table with the least swing that is still enough; the cheaper of two. */
function smallestWith(catalog: Catalog, swing: number): SizeCost | null {
  const tilting = catalog.rotaries.filter((row) => row.tilt !== null);
  const offers = [
    ...tilting.map((row) => ({ id: row.id, swing: row.swing, price: row.price, mass: row.mass })),
    ...catalog.machines.flatMap((row) =>
      row.builtIn === null
        ? []
        : [{ id: row.id, swing: row.builtIn.swing, price: row.price, mass: row.mass }],
    ),
  ];
  const enough = offers.flatMap((offer) =>
    offer.swing !== 'unknown' && offer.swing >= swing - 1e-9 ? [{ ...offer, swing: offer.swing }] : [],
  );
  const cost = (price: number | 'unknown'): number =>
    price === 'unknown' ? Number.POSITIVE_INFINITY : price;
  const best = enough.sort(
    (a, b) => a.swing - b.swing || cost(a.price) - cost(b.price) || (a.id < b.id ? -1 : 1),
  )[0];
  if (best === undefined) return null;
  const orNull = (value: number | 'unknown') => (value === 'unknown' ? null : value);
  return { id: best.id, swing: best.swing, price: orNull(best.price), mass: orNull(best.mass) };
}
