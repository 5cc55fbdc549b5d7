import type { Interval } from '../../quantities/interval.ts';
import type { Family } from '../arranging/family.ts';
import type { Verdict } from '../decision.ts';
import { endsOfCorners } from '../facts/corners.ts';
import { passes } from '../judging/outcome.ts';

/**
 * Share of the five-axis hours that is covered: the families that hold ÷ all. Open families make it a range,
 * and so do hours that are not known. Nothing at all to cover: 0.
 */
export function coverageOf(
  families: readonly { readonly family: Family; readonly verdict: Verdict }[],
): Interval {
  const hours = (end: 'low' | 'high', wanted: (verdict: Verdict) => boolean): number =>
    families.reduce((sum, each) => sum + (wanted(each.verdict) ? each.family.hours[end] : 0), 0);
  const isSure = passes;
  const isPossible = (verdict: Verdict): boolean => verdict !== 'fails';
  return {
    low: share(
      hours('low', isSure),
      hours('high', (verdict) => !isSure(verdict)),
    ),
    high: share(
      hours('high', isPossible),
      hours('low', (verdict) => !isPossible(verdict)),
    ),
  };
}

/** More families than these of unknown hours, and their corners are too many to compare. */
const MOST_CORNERED = 3;

/**
 * The same at each corner of the hours that are not known: of one family the least and the most, of two all four pairs.
 * They are the same hours whatever is bought. Covered ÷ all is linear in each of them above the same sum, so that of two
 * arrangements the one that covers more at every corner does so for all hours between. Null: all hours are known, or too
 * many are not.
 */
export function coverageAtCorners(
  families: readonly { readonly family: Family; readonly verdict: Verdict }[],
): readonly Interval[] | null {
  const notKnown = families.filter(({ family: { hours } }) => hours.low < hours.high);
  if (notKnown.length === 0 || notKnown.length > MOST_CORNERED) return null;
  return endsOfCorners(notKnown.length).map((ends) => {
    const hoursOf = ({ hours }: Family, index: number): number =>
      ends[index] === 1 ? hours.high : hours.low;
    const sum = (wanted: (verdict: Verdict) => boolean): number =>
      families.reduce((all, each) => {
        if (!wanted(each.verdict)) return all;
        return all + hoursOf(each.family, notKnown.indexOf(each));
      }, 0);
    const all = sum(() => true);
    const covered = { low: sum(passes), high: sum((verdict) => verdict !== 'fails') };
    return { low: share(covered.low, all - covered.low), high: share(covered.high, all - covered.high) };
  });
}

/** Covered ÷ all of it. Example: share(30, 10) → 0.75. */
export function share(covered: number, rest: number): number {
  if (covered === 0) return 0;
  // sums in another order leave noise in the last digits: the order of the families must not matter
  return rest === 0 ? 1 : Number((covered / (covered + rest)).toPrecision(12));
}
