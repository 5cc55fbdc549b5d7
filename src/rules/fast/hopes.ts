import type { Measure } from '../../questions/answers.ts';
import type { Candidate } from '../arranging/candidates.ts';
import type { World } from '../arranging/setting.ts';
import type { Verdict } from '../decision.ts';
import { known } from '../judging/value.ts';
import { paybackOf } from '../money/payback-at-corners.ts';
import { capitalOf, worthOf } from '../money/worth.ts';
import { coverageOf } from '../weighing/coverage.ts';
import { floorArea } from '../weighing/judged.ts';
import { leastPrices } from '../weighing/price.ts';
import { type FamilyBits, holdsBit } from './family-bits.ts';
import { perSet } from './per-set.ts';

/** The best score that an arrangement can have on each measure; more is better. */
export type Hopes = Readonly<Record<Measure, number>>;

const NOTHING = known(0, 'nothing');
const NO_HOURS = { low: 0, high: 0 };

interface Mix {
  readonly coverage: number;
  /** of a year, where each family that nothing stops holds or not, whichever is more */
  readonly gain: number;
}

/** What is known besides of an arrangement: nothing, or the most vises beside it and the least hours of its lifts. */
export interface KnownOf {
  readonly vises: number;
  readonly swapHours: number;
}

export type HopesOf = (of: Candidate, fails: Uint32Array, known?: KnownOf) => Hopes;

/**
 * What an arrangement can come to at best: every family holds that does not surely fail, nothing is bought beside the machine,
 * the rotary and its drives, and it is never lifted off. What it really comes to is never better.
 */
export function hopesBy(world: World, bits: FamilyBits, owned: string): HopesOf {
  const { shop } = world;
  const leastPrice = leastPrices(owned);
  const mixOf = {
    1: perSet(bits.words, (fails) => mixWith(world, bits, 1, fails)),
    2: perSet(bits.words, (fails) => mixWith(world, bits, 2, fails)),
  };
  return (candidate, fails, of = NOTHING_KNOWN) => {
    const { coverage, gain } = mixOf[candidate.rotary.axes](fails);
    const price = leastPrice(candidate);
    const capital = capitalOf(known(price, 'price'), shop.money).low;
    const left = gain - of.swapHours * shop.money.shopRate.low;
    const payback = paybackOf({ low: capital, high: capital }, { low: left, high: left }).low;
    const area = floorArea(candidate);
    return {
      coverage,
      viseStations: Math.min(shop.visesWanted.high, of.vises),
      payback: shop.money.hasRate && Number.isFinite(payback) ? -payback : Number.NEGATIVE_INFINITY,
      price: -price,
      floorArea: area === null ? Number.NEGATIVE_INFINITY : -area.low,
      swapHours: -of.swapHours,
      margin: Number.POSITIVE_INFINITY,
    };
  };
}

const NOTHING_KNOWN: KnownOf = { vises: Number.POSITIVE_INFINITY, swapHours: 0 };

function mixWith({ shop }: World, bits: FamilyBits, axes: 1 | 2, fails: Uint32Array): Mix {
  const families = bits.families.map((family, index): { family: typeof family; verdict: Verdict } => ({
    family,
    verdict: holdsBit(fails, 0, index) ? 'fails' : 'open',
  }));
  const { gain } = worthOf({ axes, families, price: NOTHING, swaps: NOTHING, swapHours: NO_HOURS }, shop);
  return { coverage: coverageOf(families).high, gain: gain.high };
}

/** Whatever is better on a measure stands before, measure by measure; 0: level on all of them. */
export function byHope(order: readonly Measure[], a: Hopes, b: Hopes): number {
  for (const measure of order) if (a[measure] !== b[measure]) return b[measure] - a[measure];
  return 0;
}
