import type { Interval } from '../../quantities/interval.ts';
import type { Family } from '../arranging/family.ts';
import type { Verdict } from '../decision.ts';
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

/** Covered ÷ all of it. Example: share(30, 10) → 0.75. */
export function share(covered: number, rest: number): number {
  if (covered === 0) return 0;
  // sums in another order leave noise in the last digits: the order of the families must not matter
  return rest === 0 ? 1 : Number((covered / (covered + rest)).toPrecision(12));
}
