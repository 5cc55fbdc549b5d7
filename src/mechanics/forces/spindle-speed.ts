/**
 * The spindle speed that gives a tool its cutting speed, rev/min.
 *
 * Formula: n = 1000·v_c/(π·D)
 * Symbols: v_c cutting speed, m/min; D tool diameter, mm
 * Valid: v_c ≥ 0, D ≥ 0 (without bound as D goes to 0)
 * Source: H. A.-G. El-Hofy, Fundamentals of Machining Processes, 2nd ed., CRC 2014, p. 189
 * Example: spindleSpeed(180, 63) → 909.456817668
 */
export function spindleSpeed(vc: number, diameter: number): number {
  if (vc < 0 || diameter < 0) {
    throw new RangeError(`Neither cutting speed nor diameter can be negative: ${vc} m/min, ${diameter} mm.`);
  }
  return (1000 * vc) / (Math.PI * diameter);
}
