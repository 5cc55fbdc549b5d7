import { entryAngle } from './entry-angle.ts';
import { greatestChipThickness } from './greatest-chip-thickness.ts';
import { teethInCut } from './teeth-in-cut.ts';

/** A square shoulder cut, the tool entering at its edge. */
export interface ShoulderCut {
  /** specific force at a chip thickness of 1 mm, N/mm² */
  readonly kc11: number;
  readonly mc: number;
  /** of the tool, mm */
  readonly diameter: number;
  readonly teeth: number;
  /** axial depth, mm */
  readonly ap: number;
  /** radial width, mm */
  readonly ae: number;
  /** feed per tooth, mm */
  readonly fz: number;
}

/**
 * The greatest force along the cutting direction, N: every tooth that can be in the cut taken at the
 * thickest chip. Never below the true peak, equal to it with one tooth in the cut. A sharp tool: wear
 * adds 30 to 50 %.
 *
 * Formula: F_t = k_c(h_max)·a_p·h_max·⌈z·φ_s/360°⌉ = k_c1.1·h_max^(1 − m_c)·a_p·⌈z·φ_s/360°⌉
 * Symbols: k_c1.1, m_c of the material, N/mm², none; h_max greatest chip thickness, mm; a_p axial depth, mm; z teeth; φ_s angle in the cut, degrees
 * Valid: sizes ≥ 0, 0 ≤ a_e ≤ D, 0 ≤ m_c < 1
 * Source: O. Kienzle's formula at the greatest chip; the peak instead of the mean: Y. Altintas, Manufacturing Automation, ch. 2 (from memory)
 * Example: peakTangentialForce({ kc11: 1500, mc: 0.22, diameter: 20, teeth: 4, ap: 10, ae: 10, fz: 0.1 }) → 2489.380361156
 */
export function peakTangentialForce({ kc11, mc, diameter, teeth, ap, ae, fz }: ShoulderCut): number {
  if (kc11 < 0 || mc < 0 || mc >= 1)
    throw new RangeError(`No material has k_c1.1 ${kc11} N/mm² with m_c ${mc}.`);
  if (ap < 0) throw new RangeError(`A depth of cut cannot be negative: ${ap} mm.`);
  const h = greatestChipThickness(fz, ae, diameter);
  if (h === 0) return 0;
  return kc11 * h ** (1 - mc) * ap * teethInCut(teeth, entryAngle(ae, diameter));
}
