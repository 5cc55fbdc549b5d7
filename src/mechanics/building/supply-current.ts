/**
 * Current that a connected load draws from its supply, A.
 *
 * Formula: I = 1000·S/(√3·U) on three phases, 1000·S/U on one
 * Symbols: S apparent power, kVA; U voltage between lines, V; phases 1 or 3
 * Valid: S ≥ 0, U > 0, 1 or 3 phases
 * Source: hardhatmath.com and industrialmonitordirect.com (three phases); definition of apparent power (one)
 * Example: supplyCurrent(30, 400, 3) → 43.3012701892
 * Example: supplyCurrent(9.2, 230, 1) → 40
 */
export function supplyCurrent(apparentPower: number, volts: number, phases: number): number {
  if (!(apparentPower >= 0 && volts > 0))
    throw new RangeError(`No supply: ${apparentPower} kVA, ${volts} V.`);
  if (phases !== 1 && phases !== 3) throw new RangeError(`A supply has one phase or three, not ${phases}.`);
  return (1000 * apparentPower) / ((phases === 3 ? Math.sqrt(3) : 1) * volts);
}
