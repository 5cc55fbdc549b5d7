import { simplePayback } from '../../mechanics/money/simple-payback.ts';
import type { Interval } from '../../quantities/interval.ts';
import { endsOfCorners } from '../facts/corners.ts';
import { gainOf, type YearlyChange } from './gain.ts';
import type { MoneyCase } from './money-case.ts';

/** Years at the ends of what is paid and gained; Infinity: never. */
export const paybackOf = (capital: Interval, gain: Interval): Interval => ({
  low: simplePayback(capital.low, gain.high),
  high: simplePayback(capital.high, gain.low),
});

/** More families than these whose yearly work is not known, and their corners are too many to compare. */
const MOST_CORNERED = 2;

/** What a family saves at the least and at the most of its yearly work; null: the work is known. */
export type SavedAtEnds = readonly [least: Interval, most: Interval] | null;

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
  savedAtEnds: readonly SavedAtEnds[],
): readonly Interval[] | null {
  const notKnown = savedAtEnds.flatMap((each, family) => (each === null ? [] : [family]));
  const cornered = notKnown.length <= MOST_CORNERED ? notKnown : [];
  const beside = { low: rigging.low + training.low, high: rigging.high + training.high };
  const isMoneyKnown = [shopRate, yearlyCosts, beside].every(({ low, high }) => low === high);
  if (isMoneyKnown && cornered.length === 0) return null;
  const corner = endsOfCorners(cornered.length).flatMap((chosen) => {
    const saved = change.saved.map((anywhere, family) => {
      const end = chosen[cornered.indexOf(family)];
      return (end === undefined ? null : savedAtEnds[family]?.[end]) ?? anywhere;
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

const ends = ({ low, high }: Interval): readonly Interval[] =>
  [low, high].map((end) => ({ low: end, high: end }));
