/**
 * Whether a rectangle goes into another, standing either way round.
 *
 * Formula: the longer side within the longer, the shorter within the shorter
 * Symbols: sides, any one unit
 * Valid: sides ≥ 0; turned by a quarter only, not askew
 * Source: geometry
 * Example: fitsEitherWay([3000, 2000], [2100, 3100]) → true
 * Example: fitsEitherWay([3000, 2000], [2900, 2900]) → false
 */
export function fitsEitherWay(needed: readonly [number, number], there: readonly [number, number]): boolean {
  if ([...needed, ...there].some((side) => !(side >= 0)))
    throw new RangeError(`Sides are not below nothing: ${needed} in ${there}.`);
  return Math.max(...needed) <= Math.max(...there) && Math.min(...needed) <= Math.min(...there);
}
