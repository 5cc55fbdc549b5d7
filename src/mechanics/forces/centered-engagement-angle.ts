/**
 * The angle over which a tooth is in the cut when the cut lies centered under the tool (face milling), degrees.
 *
 * Formula: φ = 2·arcsin(a_e/D)
 * Symbols: a_e radial width of cut, mm; D tool diameter, mm
 * Valid: 0 ≤ a_e ≤ D; 0 where the width is nothing beside the diameter
 * Source: engagement of a centered face mill; H. A.-G. El-Hofy, Fundamentals of Machining Processes, 2nd ed., CRC 2014, p. 174
 * Example: centeredEngagementAngle(25, 50) → 60
 */
export function centeredEngagementAngle(ae: number, diameter: number): number {
  if (ae < 0 || diameter < 0 || ae > diameter) {
    throw new RangeError(
      `The width of cut lies between 0 and the tool's diameter: ${ae} mm of ${diameter} mm.`,
    );
  }
  if (ae === 0) return 0;
  return (2 * Math.asin(ae / diameter) * 180) / Math.PI;
}
