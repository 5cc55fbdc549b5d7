/** A cylinder with a bore; a full one has the inner radius 0. */
export interface HollowCylinder {
  /** kg */
  readonly mass: number;
  /** mm */
  readonly outer: number;
  /** mm */
  readonly inner: number;
}

function needCylinder({ mass, outer, inner }: HollowCylinder): void {
  if (mass < 0 || inner < 0 || outer < inner) {
    throw new RangeError(`No such hollow cylinder: ${mass} kg, radii ${inner} and ${outer} mm.`);
  }
}

/**
 * The moment of inertia of a hollow cylinder (a ring, a chuck, a faceplate) about its own axis, kg·m².
 *
 * Formula: J = ½·m·(R² + r²)/10⁶
 * Symbols: m mass, kg; R outer radius, mm; r inner radius, mm
 * Valid: m ≥ 0, 0 ≤ r ≤ R
 * Source: Machinery's Handbook, 31st ed., pp. 237 and 254 (radius of gyration)
 * Example: hollowCylinderInertia({ mass: 10, outer: 100, inner: 40 }) → 0.058
 */
export function hollowCylinderInertia(cylinder: HollowCylinder): number {
  needCylinder(cylinder);
  return (cylinder.mass * (cylinder.outer ** 2 + cylinder.inner ** 2)) / 2e6;
}

/**
 * The moment of inertia of a hollow cylinder about an axis across its middle, kg·m².
 *
 * Formula: J = m·(3·(R² + r²) + h²)/12/10⁶
 * Symbols: m mass, kg; R outer radius, mm; r inner radius, mm; h length, mm
 * Valid: m ≥ 0, 0 ≤ r ≤ R, h ≥ 0
 * Source: Machinery's Handbook, 31st ed., pp. 237 and 254 (radius of gyration)
 * Example: hollowCylinderInertiaAcross({ mass: 12, outer: 100, inner: 0 }, 60) → 0.0336
 */
export function hollowCylinderInertiaAcross(cylinder: HollowCylinder, length: number): number {
  needCylinder(cylinder);
  if (length < 0) throw new RangeError(`A length cannot be negative: ${length} mm.`);
  return (cylinder.mass * (3 * (cylinder.outer ** 2 + cylinder.inner ** 2) + length ** 2)) / 12e6;
}
