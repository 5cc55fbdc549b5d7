/**
 * A number that may not be known: every value from `low` to `high` is possible.
 * A known number has `low === high`; an end that nothing bounds is infinite.
 */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Nothing is known at all. */
export const anything: Interval = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };

/** Nothing is known but that it is not negative. */
export const anythingFromZero: Interval = { low: 0, high: Number.POSITIVE_INFINITY };

export const isExact = (interval: Interval): boolean => interval.low === interval.high;

/** The smallest interval that holds all of them. Throws RangeError on an empty list. */
export function hull(intervals: readonly Interval[]): Interval {
  if (intervals.length === 0) throw new RangeError('the hull of nothing');
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const each of intervals) {
    low = Math.min(low, each.low);
    high = Math.max(high, each.high);
  }
  return { low, high };
}
