/**
 * A number that may not be known: every value from `low` to `high` is possible.
 * A known number has `low === high`; an end that nothing bounds is infinite.
 */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The interval that holds one value only. Example: exactly(5) → { low: 5, high: 5 }. */
export const exactly = (value: number): Interval => ({ low: value, high: value });

/** Every value from low to high. Throws RangeError when the ends are not in order or not numbers. */
export function between(low: number, high: number): Interval {
  if (!(low <= high)) throw new RangeError(`not an interval: from ${low} to ${high}`);
  return { low, high };
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

/** Sum of two intervals. Example: [1, 2] + [10, 20] → [11, 22]. */
export const plus = (a: Interval, b: Interval): Interval => ({ low: a.low + b.low, high: a.high + b.high });

/** Difference of two intervals, each free of the other. Example: [10, 20] − [1, 2] → [8, 19]. */
export const minus = (a: Interval, b: Interval): Interval => ({ low: a.low - b.high, high: a.high - b.low });
