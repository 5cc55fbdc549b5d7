/** An amount as whole cents: sums of them are exact. Example: toCents(1234.565) → 123457. */
export const toCents = (amount: number): number => Math.round(amount * 100);

/** Example: fromCents(123457) → 1234.57. */
export const fromCents = (cents: number): number => cents / 100;
