/**
 * The angle over which a tooth is in the cut when the tool enters at its edge (shoulder, side milling), degrees.
 *
 * Formula: φ_s = arccos(1 − 2·a_e/D) = 2·arcsin √(a_e/D), which keeps its digits for thin cuts
 * Symbols: a_e radial width of cut, mm; D tool diameter, mm
 * Valid: 0 ≤ a_e ≤ D (a slot); 0 where the width is nothing beside the diameter
 * Source: engagement of a side mill; H. A.-G. El-Hofy, Fundamentals of Machining Processes, 2nd ed., CRC 2014, p. 174
 * Example: entryAngle(12.5, 50) → 60
 */
export function entryAngle(ae: number, diameter: number): number {
  if (ae < 0 || diameter < 0 || ae > diameter) {
    throw new RangeError(
      `The width of cut lies between 0 and the tool's diameter: ${ae} mm of ${diameter} mm.`,
    );
  }
  if (ae === 0) return 0;
  return (2 * Math.asin(Math.sqrt(ae / diameter)) * 180) / Math.PI;
}
