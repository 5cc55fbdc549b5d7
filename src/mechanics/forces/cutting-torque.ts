/**
 * The torque of a shaft that gives a power at a speed, N·m.
 *
 * Formula: M = P·30000/(π·n)
 * Symbols: P power, kW; n speed, rev/min
 * Valid: P ≥ 0, n ≥ 0 (without bound as n goes to 0)
 * Source: power is torque times angular speed
 * Example: cuttingTorque(0.24, 150) → 15.2788745368
 */
export function cuttingTorque(powerKW: number, n: number): number {
  if (powerKW < 0 || n < 0)
    throw new RangeError(`Neither power nor speed can be negative: ${powerKW} kW, ${n} rev/min.`);
  return (powerKW * 30_000) / (Math.PI * n);
}
