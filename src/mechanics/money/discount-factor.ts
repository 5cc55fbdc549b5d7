/**
 * What one unit of money that comes after some years is worth today.
 *
 * Formula: (1 + i)^−n
 * Symbols: i interest a year, as a share; n years
 * Valid: i > −1, n ≥ 0
 * Source: L. Blank, A. Tarquin, Engineering Economy, 8th ed., the factor (P/F, i, n)
 * Example: discountFactor(0.25, 2) → 0.64
 */
export function discountFactor(interest: number, years: number): number {
  if (interest <= -1 || years < 0) {
    throw new RangeError(`Interest must be above −1 and years not negative: ${interest}, ${years}.`);
  }
  return (1 + interest) ** -years;
}
