/** From kg·mm² to kg·m². */
const MM2 = 1e-6;

/** Where there is no mass or no distance there is nothing, whatever the other may be. */
const product = (mass: number, squares: number): number =>
  mass === 0 || squares === 0 ? 0 : mass * squares * MM2;

function needSizes(...sizes: readonly number[]): void {
  if (sizes.some((size) => size < 0)) {
    throw new RangeError(
      `Neither a mass nor a length of a turning body can be negative: ${sizes.join(', ')}.`,
    );
  }
}

/**
 * The moment of inertia of a solid cylinder about its own axis, kg·m².
 *
 * Formula: J = ½·m·r²/10⁶
 * Symbols: m mass, kg; r radius, mm
 * Valid: m ≥ 0, r ≥ 0
 * Source: Machinery's Handbook, 31st ed., pp. 237 and 254 (radius of gyration)
 * Example: cylinderInertia(2, 100) → 0.01
 */
export function cylinderInertia(m: number, r: number): number {
  needSizes(m, r);
  return product(m, r ** 2) / 2;
}

/**
 * The moment of inertia of a block about an axis through its center, square to the two sides given, kg·m².
 *
 * Formula: J = m·(a² + b²)/12/10⁶
 * Symbols: m mass, kg; a, b the two sides square to the axis, mm
 * Valid: all ≥ 0
 * Source: Machinery's Handbook, 31st ed., pp. 237 and 254 (radius of gyration)
 * Example: blockInertia(23.55, 200, 150) → 0.12265625
 */
export function blockInertia(m: number, a: number, b: number): number {
  needSizes(m, a, b);
  return product(m, a ** 2 + b ** 2) / 12;
}

/**
 * The moment of inertia about an axis beside the one through the center of mass, kg·m².
 *
 * Formula: J′ = J + m·d²/10⁶
 * Symbols: J about the center of mass, kg·m²; m mass, kg; d distance of the two parallel axes, mm
 * Valid: all ≥ 0
 * Source: parallel axis theorem
 * Example: parallelAxis(0.01, 2, 100) → 0.03
 */
export function parallelAxis(j: number, m: number, d: number): number {
  needSizes(j, m, d);
  return j + product(m, d ** 2);
}
