/** One arc second in radians. */
const ARC_SECOND = Math.PI / 648_000;

/**
 * How far a point moves when its axis turns by a small angle, mm.
 *
 * Formula: s = R·δ·π/648000
 * Symbols: R distance from the axis, mm; δ angle, arc seconds
 * Valid: R ≥ 0; the sign of the angle is kept
 * Source: definition of the arc second (1/3600 degree)
 * Example: arcSecondsToLength(100, 10) → 0.00484813681110
 */
export function arcSecondsToLength(radius: number, arcsec: number): number {
  if (radius < 0) throw new RangeError(`A distance from an axis cannot be negative: ${radius} mm.`);
  return arcsec === 0 || radius === 0 ? 0 : radius * arcsec * ARC_SECOND;
}
