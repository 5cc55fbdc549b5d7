/**
 * What one unit of money at the end of every year is worth today.
 *
 * Formula: (P/A, i, n) = (1 − (1 + i)^−n)/i
 * Symbols: i interest a year, as a share; n years
 * Valid: i > −1, n ≥ 0; without interest it is n
 * Source: L. Blank, A. Tarquin, Engineering Economy, 8th ed., the factor (P/A, i, n)
 * Example: annuityFactor(0.1, 5) → 3.7907867694
 * Example: annuityFactor(0, 5) → 5
 */
export function annuityFactor(interest: number, years: number): number {
  if (interest <= -1 || years < 0) {
    throw new RangeError(`Interest must be above −1 and years not negative: ${interest}, ${years}.`);
  }
  if (interest === 0) return years;
  // written as it stands, 1 − (1 + i)^−n loses its digits at small interest
  return -Math.expm1(-years * Math.log1p(interest)) / interest;
}
