/**
 * What independent errors come to together, in their unit.
 *
 * Formula: √(e₁² + e₂² + …)
 * Symbols: e the single errors, all in one unit
 * Valid: any errors; none at all come to 0
 * Source: root of the sum of squares of independent errors
 * Example: errorBudget([3, 4, 12]) → 13
 */
export function errorBudget(errors: readonly number[]): number {
  return Math.hypot(...errors);
}
