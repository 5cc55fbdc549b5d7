import { sine } from '../geometry/sine-and-cosine.ts';
import { entryAngle } from './entry-angle.ts';

/**
 * The greatest thickness of the chip while a tooth goes through the cut, mm.
 *
 * Formula: h_max = f_z·sin φ_s for φ_s < 90°, else f_z
 * Symbols: f_z feed per tooth, mm; φ_s angle in the cut of a tool entering at its edge, degrees, from a_e radial width of cut, mm, and D tool diameter, mm
 * Valid: f_z ≥ 0, 0 ≤ a_e ≤ D
 * Source: h = f_z·sin φ (Y. Altintas, Manufacturing Automation, ch. 2; from memory)
 * Example: greatestChipThickness(0.1, 5, 50) → 0.06
 */
export function greatestChipThickness(fz: number, ae: number, diameter: number): number {
  if (fz < 0) throw new RangeError(`A feed per tooth cannot be negative: ${fz} mm.`);
  const angle = entryAngle(ae, diameter);
  return angle < 90 ? fz * sine(angle) : fz;
}
