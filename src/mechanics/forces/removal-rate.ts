/**
 * The volume of chips that a milling cut makes, cm³/min.
 *
 * Formula: Q = a_p·a_e·v_f/1000
 * Symbols: a_p axial depth, mm; a_e radial width, mm; v_f feed rate, mm/min
 * Valid: all ≥ 0
 * Source: H. A.-G. El-Hofy, Fundamentals of Machining Processes, 2nd ed., CRC 2014, p. 174
 * Example: removalRate(3, 60, 600) → 108
 */
export function removalRate(ap: number, ae: number, vf: number): number {
  if (ap < 0 || ae < 0 || vf < 0) {
    throw new RangeError(`Depth, width and feed cannot be negative: ${ap} mm, ${ae} mm, ${vf} mm/min.`);
  }
  return (ap * ae * vf) / 1000;
}
