/**
 * The radius of the circle that a block sweeps when it turns about its own upright axis, mm.
 *
 * Formula: r = ½·√(a² + b²)
 * Symbols: a, b the two level sides of the block as it stands, mm
 * Valid: a ≥ 0, b ≥ 0, infinite included
 * Source: half the diagonal of a rectangle
 * Example: blockPlanRadius(60, 80) → 50
 */
export function blockPlanRadius(a: number, b: number): number {
  if (a < 0 || b < 0) throw new RangeError(`A block cannot have a negative side: ${a} × ${b} mm.`);
  return Math.hypot(a, b) / 2;
}
