import { simplePayback } from '../../mechanics/money/simple-payback.ts';
import type { Interval } from '../../quantities/interval.ts';
import type { Family } from '../arranging/family.ts';
import type { Verdict } from '../decision.ts';
import { passes } from '../judging/outcome.ts';
import { gainOf, type YearlyChange } from './gain.ts';
import type { MoneyCase } from './money-case.ts';

/** Years at the ends of what is paid and gained; Infinity: never. */
export const paybackOf = (capital: Interval, gain: Interval): Interval => ({
  low: simplePayback(capital.low, gain.high),
  high: simplePayback(capital.high, gain.low),
});

/** More families than these whose yearly work is not known, and their corners are too many to compare. */
const MOST_CORNERED = 2;

/** A family on an arrangement, with the hours that it saves there. */
export interface Saving {
  readonly family: Family;
  readonly verdict: Verdict;
  readonly axes: 1 | 2;
  readonly saved: Interval;
}

/**
 * Payback at each corner of what is the same whatever is bought and not known: rate, running costs, rigging and training,
 * and of a family its holdings or what each takes in a year (lots × setup minutes + quantity × handling), whose product a
 * rotary saves. Two paybacks compare the same way for every value of them if they do at every corner, because
 * C·A′ − C′·A is linear in each of them; but only while the gain keeps its sign. Null: all known, or no help.
 */
export function paybackAtCorners(
  change: YearlyChange,
  price: Interval,
  { rigging, training, yearlyCosts, shopRate }: MoneyCase,
  savings: readonly Saving[],
): readonly Interval[] | null {
  const notKnown = savings.filter(({ family }) => !family.onRotary.isKnown);
  const cornered = notKnown.length <= MOST_CORNERED ? notKnown : [];
  const beside = { low: rigging.low + training.low, high: rigging.high + training.high };
  const isMoneyKnown = [shopRate, yearlyCosts, beside].every(({ low, high }) => low === high);
  if (isMoneyKnown && cornered.length === 0) return null;
  const corner = choices(cornered.length).flatMap((atHigh) => {
    const saved = savings.map((each) => {
      const index = cornered.indexOf(each);
      return index < 0 ? each.saved : savedAt(each, atHigh[index] === true ? 'high' : 'low');
    });
    return ends(shopRate).flatMap((rate) =>
      ends(yearlyCosts).flatMap((running) =>
        ends(beside).map(({ low: paid }) => {
          const gain = gainOf({ ...change, saved, rate, running });
          return { gain, payback: paybackOf({ low: price.low + paid, high: price.high + paid }, gain) };
        }),
      ),
    );
  });
  const always = corner.every(({ gain }) => gain.low > 0) || corner.every(({ gain }) => gain.high <= 0);
  return always ? corner.map(({ payback }) => payback) : null;
}

/** What a family saves with its yearly work at one end; all that it may where more than that is not known. */
function savedAt({ family, verdict, axes, saved }: Saving, end: 'low' | 'high'): Interval {
  const on = family.onRotary.byAxes[axes];
  if (verdict === 'fails' || !on.isInStep) return saved;
  const hours = on.saved(1)[end];
  return { low: passes(verdict) ? hours : 0, high: hours };
}

const ends = ({ low, high }: Interval): readonly Interval[] =>
  [low, high].map((end) => ({ low: end, high: end }));

/** Every way to choose yes or no so many times, always in the same order. */
const choices = (count: number): readonly (readonly boolean[])[] =>
  Array.from({ length: 2 ** count }, (_, which) =>
    Array.from({ length: count }, (__, index) => Math.floor(which / 2 ** index) % 2 === 1),
  );
