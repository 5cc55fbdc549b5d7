/**
 * Lifting index: how a load compares with the recommended limit; up to 1 is the aim, beyond 3 nearly all are at risk.
 *
 * Formula: LI = L/RWL
 * Symbols: L load, RWL recommended weight limit, both kg (lb)
 * Valid: L ≥ 0, RWL ≥ 0; without bound where nothing may be lifted
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, pp. 1, 20
 * Example: liftingIndex(20, 8) → 2.5
 */
export function liftingIndex(load: number, limit: number): number {
  if (!(load >= 0 && limit >= 0)) throw new RangeError(`No such lift: ${load} of ${limit}.`);
  return limit === 0 ? Number.POSITIVE_INFINITY : load / limit;
}
