/**
 * Years until a yearly gain has brought back what was paid; Infinity: never.
 *
 * Formula: C/A
 * Symbols: C what was paid, any currency; A yearly gain, the same currency
 * Valid: C ≥ 0; where A ≤ 0 it never pays for itself
 * Source: L. Blank, A. Tarquin, Engineering Economy, 8th ed., payback without interest
 * Example: simplePayback(40000, 10000) → 4
 */
export function simplePayback(cost: number, yearlyGain: number): number {
  if (cost < 0) throw new RangeError(`What was paid cannot be negative: ${cost}.`);
  return yearlyGain > 0 ? cost / yearlyGain : Number.POSITIVE_INFINITY;
}
