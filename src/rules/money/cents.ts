import type { Interval } from '../../quantities/interval.ts';

/** An amount as whole cents: sums of them are exact. Example: toCents(1234.565) → 123457. */
export const toCents = (amount: number): number => Math.round(amount * 100);

/** Example: fromCents(123457) → 1234.57. */
export const fromCents = (cents: number): number => cents / 100;

/** Example: roundedToCents({ low: 1.005, high: 2.346 }) → { low: 1, high: 2.35 }. */
export const roundedToCents = ({ low, high }: Interval): Interval => ({
  low: fromCents(toCents(low)),
  high: fromCents(toCents(high)),
});
