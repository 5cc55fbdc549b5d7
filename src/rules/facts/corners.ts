import type { Interval } from '../../quantities/interval.ts';

/**
 * The ends of a function that rises or falls steadily with each of its inputs: its values at every corner.
 * A corner that comes out as no number leaves that end unbounded. Throws what the function throws.
 * Example: corners([{ low: 1, high: 2 }, { low: 3, high: 4 }], ([a, b]) => a * b) → { low: 3, high: 8 }.
 */
export function corners(inputs: readonly Interval[], of: (values: readonly number[]) => number): Interval {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const visit = (index: number, chosen: readonly number[]): void => {
    const input = inputs[index];
    if (input === undefined) {
      const value = of(chosen);
      low = Number.isNaN(value) ? Number.NEGATIVE_INFINITY : Math.min(low, value);
      high = Number.isNaN(value) ? Number.POSITIVE_INFINITY : Math.max(high, value);
      return;
    }
    visit(index + 1, [...chosen, input.low]);
    if (input.high !== input.low) visit(index + 1, [...chosen, input.high]);
  };
  visit(0, []);
  return { low, high };
}

/**
 * Every corner of so many ranges: for each range its low end (0) or its high end (1), always in the same order.
 * Example: endsOfCorners(2) → [[0, 0], [1, 0], [0, 1], [1, 1]].
 */
export const endsOfCorners = (count: number): readonly (readonly number[])[] =>
  Array.from({ length: 2 ** count }, (_, corner) =>
    Array.from({ length: count }, (__, index) => Math.floor(corner / 2 ** index) % 2),
  );
