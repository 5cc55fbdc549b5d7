/**
 * Asymmetry multiplier: the share of the load constant that is left for how far the body is turned.
 *
 * Formula: AM = 1 − 0.0032·A; 0 for A > 135
 * Symbols: A angle between the load and the middle of the body, degrees
 * Valid: A ≥ 0
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, p. 12
 * Example: asymmetryMultiplier(30) → 0.904
 * Example: asymmetryMultiplier(136) → 0
 */
export function asymmetryMultiplier(angle: number): number {
  if (!(angle >= 0)) throw new RangeError(`An angle is taken without its sign: ${angle}°.`);
  return angle > 135 ? 0 : 1 - 0.0032 * angle;
}
