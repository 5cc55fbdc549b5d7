/** Standard gravity, m/s². */
const GRAVITY = 9.80665;

/**
 * Pressure on the floor under something heavy, spread evenly, kPa.
 *
 * Formula: p = m·g/(1000·A)
 * Symbols: m mass, kg; A area it stands on, m²; g = 9.80665 m/s²
 * Valid: m ≥ 0, A > 0; feet are point loads: what the slab takes there is for a structural engineer
 * Source: definition of pressure
 * Example: floorPressure(4000, 5) → 7.84532
 */
export function floorPressure(mass: number, area: number): number {
  if (!(mass >= 0 && area > 0)) throw new RangeError(`Nothing stands so: ${mass} kg on ${area} m².`);
  return (mass * GRAVITY) / (1000 * area);
}
