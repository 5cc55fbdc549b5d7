/**
 * How far a point of the work lies from the tilt axis, mm: the radius of the circle it moves on.
 *
 * Formula: ρ = √(v² + w²)
 * Symbols: v level distance from the tilt axis at tilt 0, mm; w height above it at tilt 0, mm
 * Valid: any v and w
 * Source: Pythagoras
 * Example: distanceFromAxis(30, -40) → 50
 */
export function distanceFromAxis(v: number, w: number): number {
  return Math.hypot(v, w);
}
