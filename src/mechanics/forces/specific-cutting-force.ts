/**
 * The force that it takes to cut a chip, for each mm² of its cross section, N/mm². A sharp tool.
 *
 * Formula: k_c = k_c1.1·h^(−m_c)
 * Symbols: k_c1.1 specific force at a thickness of 1 mm, N/mm²; m_c exponent, none; h chip thickness, mm
 * Valid: k_c1.1 ≥ 0, 0 ≤ m_c < 1, h ≥ 0 (without bound as h goes to 0)
 * Source: O. Kienzle's formula; H. A.-G. El-Hofy, Fundamentals of Machining Processes, 2nd ed., CRC 2014
 * Example: specificCuttingForce(1500, 0.22, 0.1) → 2489.380361156
 */
export function specificCuttingForce(kc11: number, mc: number, h: number): number {
  if (kc11 < 0 || mc < 0 || mc >= 1)
    throw new RangeError(`No material has k_c1.1 ${kc11} N/mm² with m_c ${mc}.`);
  if (h < 0) throw new RangeError(`A chip thickness cannot be negative: ${h} mm.`);
  return kc11 * h ** -mc;
}
