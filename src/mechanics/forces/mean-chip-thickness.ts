import { entryAngle } from './entry-angle.ts';

/**
 * The mean thickness of the chip over the angle in the cut, cutting edge angle 90°, mm.
 *
 * Formula: h_m = f_z·(a_e/D)·360°/(π·φ_s)
 * Symbols: f_z feed per tooth, mm; a_e radial width of cut, mm; D tool diameter, mm; φ_s angle in the cut, degrees, that of a tool entering at its edge unless given
 * Valid: f_z ≥ 0, 0 ≤ a_e ≤ D, 0 < φ_s ≤ 180 for a width above 0; 0 where the width is nothing beside the diameter
 * Source: mean of f_z·sin φ over the cut; the same in the guide with the VDI 3323 table of specific cutting forces, 2017, p. 558
 * Example: meanChipThickness(0.1, 25, 50) → 0.0636619772368
 */
export function meanChipThickness(
  fz: number,
  ae: number,
  diameter: number,
  angle: number = entryAngle(ae, diameter),
): number {
  if (fz < 0 || ae < 0 || diameter < 0 || ae > diameter) {
    throw new RangeError(`No such cut: feed per tooth ${fz} mm, width ${ae} mm, diameter ${diameter} mm.`);
  }
  if (ae === 0 || diameter === Number.POSITIVE_INFINITY) return 0;
  if (angle <= 0 || angle > 180)
    throw new RangeError(`The angle in the cut lies between 0° and 180°: ${angle}°.`);
  return (fz * (ae / diameter) * 360) / (Math.PI * angle);
}
