import type { Stated } from '../../catalog/catalog.ts';
import type { Measure } from '../../questions/answers.ts';
import type { Candidate } from '../arranging/candidates.ts';
import { BARE, groundOf, type World } from '../arranging/setting.ts';
import { mostStations } from '../arranging/vise-stations.ts';
import type { Verdict } from '../decision.ts';
import { known } from '../judging/value.ts';
import { paybackOf } from '../money/payback-at-corners.ts';
import { capitalOf, worthOf } from '../money/worth.ts';
import { coverageOf } from '../weighing/coverage.ts';
import { floorArea } from '../weighing/judged.ts';
import { type FamilyBits, holdsBit } from './family-bits.ts';

/** The best score that an arrangement can have on each measure; more is better. */
export type Hopes = Readonly<Record<Measure, number>>;

const NOTHING = known(0, 'nothing');
const NO_HOURS = { low: 0, high: 0 };

interface Mix {
  readonly coverage: number;
  /** of a year, where each family that nothing stops holds or not, whichever is more */
  readonly gain: number;
}

/**
 * What an arrangement can come to at best: every family holds that does not surely fail, nothing is bought beside the machine
 * and the rotary, and it is never lifted off. What it really comes to is never better.
 */
export function hopesBy(
  world: World,
  bits: FamilyBits,
  owned: string,
): (of: Candidate, fails: Uint32Array) => Hopes {
  const mixes = new Map<string, Mix>();
  const { shop } = world;
  const mixOf = (axes: 1 | 2, fails: Uint32Array): Mix => {
    const key = `${axes}/${fails.join()}`;
    const made = mixes.get(key) ?? mixWith(world, bits, axes, fails);
    mixes.set(key, made);
    return made;
  };
  return (candidate, fails) => {
    const { machine, rotary } = candidate;
    const { coverage, gain } = mixOf(rotary.axes, fails);
    const price =
      (owned === machine.key ? 0 : leastOf(machine.row.price)) +
      (rotary.row === null || machine.row.rotaryIncluded === rotary.key ? 0 : leastOf(rotary.row.price));
    const capital = capitalOf(known(price, 'price'), shop.money).low;
    const payback = paybackOf({ low: capital, high: capital }, { low: gain, high: gain }).low;
    const area = floorArea(candidate);
    return {
      coverage,
      viseStations: shop.visesWanted.high,
      payback: shop.money.hasRate && Number.isFinite(payback) ? -payback : Number.NEGATIVE_INFINITY,
      price: -price,
      floorArea: area === null ? Number.NEGATIVE_INFINITY : -area.low,
      swapHours: 0,
      margin: Number.POSITIVE_INFINITY,
    };
  };
}

const leastOf = (price: Stated): number => (price === 'unknown' ? 0 : price);

function mixWith({ shop }: World, bits: FamilyBits, axes: 1 | 2, fails: Uint32Array): Mix {
  const families = bits.families.map((family, index): { family: typeof family; verdict: Verdict } => ({
    family,
    verdict: holdsBit(fails, 0, index) ? 'fails' : 'open',
  }));
  const { gain } = worthOf({ axes, families, price: NOTHING, swaps: NOTHING, swapHours: NO_HOURS }, shop);
  return { coverage: coverageOf(families).high, gain: gain.high };
}

/** The same with the vises that find room at all; that takes a little longer. */
export function withVises(hopes: Hopes, world: World, candidate: Candidate): Hopes {
  const most = [false, true].map((turned) =>
    mostStations(groundOf(world, candidate, { ...BARE, place: { ...BARE.place, turned } })),
  );
  if (candidate.machine.builtIn || most.some((each) => each === null)) return hopes;
  const vises = Math.max(...most.map((each) => each ?? 0));
  return { ...hopes, viseStations: Math.min(hopes.viseStations, vises) };
}

/** Whatever is better on a measure stands before, measure by measure; 0: level on all of them. */
export function byHope(order: readonly Measure[], a: Hopes, b: Hopes): number {
  for (const measure of order) if (a[measure] !== b[measure]) return b[measure] - a[measure];
  return 0;
}
