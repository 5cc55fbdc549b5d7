/**
 * The feed rate of a milling cut, mm/min.
 *
 * Formula: v_f = f_z·z·n
 * Symbols: f_z feed per tooth, mm; z teeth; n spindle speed, rev/min
 * Valid: all ≥ 0
 * Source: H. A.-G. El-Hofy, Fundamentals of Machining Processes, 2nd ed., CRC 2014, p. 189
 * Example: tableFeed(0.1, 8, 150) → 120
 */
export function tableFeed(fz: number, teeth: number, n: number): number {
  if (fz < 0 || teeth < 0 || n < 0) {
    throw new RangeError(
      `Feed per tooth, teeth and speed cannot be negative: ${fz} mm, ${teeth}, ${n} rev/min.`,
    );
  }
  return fz * teeth * n;
}
