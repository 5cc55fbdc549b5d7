/**
 * How far two slots may be off their pitch, ± mm.
 *
 * Formula: table: pitch up to 25 ±0.2, up to 100 ±0.3, up to 250 ±0.5, up to 500 ±0.8
 * Symbols: pitch of the slots, mm
 * Valid: 20 ≤ pitch ≤ 500
 * Source: ISO 299:1987 sizes as printed in "T-Slot Profile Design per BS 2485", engineersedge.com
 * Example: slotPitchTolerance(80) → 0.3
 */
export function slotPitchTolerance(pitch: number): number {
  if (!(pitch >= 20 && pitch <= 500))
    throw new RangeError(`The standard has no pitch of ${pitch} mm: 20 to 500.`);
  if (pitch <= 25) return 0.2;
  if (pitch <= 100) return 0.3;
  return pitch <= 250 ? 0.5 : 0.8;
}
