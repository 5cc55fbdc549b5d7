/**
 * The mean power at the tool in a milling cut, kW. The motor needs it divided by the spindle's efficiency.
 *
 * Formula: P = a_p·a_e·v_f·k_c/(60·10⁶)
 * Symbols: a_p axial depth, mm; a_e radial width, mm; v_f feed rate, mm/min; k_c specific cutting force at the mean chip thickness, N/mm²
 * Valid: all ≥ 0; no chip takes no power, though k_c grows without bound as it gets thin
 * Source: H. A.-G. El-Hofy, Fundamentals of Machining Processes, 2nd ed., CRC 2014, p. 189
 * Example: cuttingPower(4, 30, 120, 1000) → 0.24
 */
export function cuttingPower(ap: number, ae: number, vf: number, kc: number): number {
  if (ap < 0 || ae < 0 || vf < 0 || kc < 0) {
    throw new RangeError(`No such cut: ${ap} mm deep, ${ae} mm wide, ${vf} mm/min, ${kc} N/mm².`);
  }
  if (ap === 0 || ae === 0 || vf === 0) return 0;
  return (ap * ae * vf * kc) / 60e6;
}
