import { LIFTING_CONSTANTS, type LiftingUnits } from './lifting-units.ts';

/**
 * Vertical multiplier: the share of the load constant that is left for how high the hands are.
 *
 * Formula: VM = 1 − 0.003·|V − 75|; 0 for V > 175 (in inches 0.0075, 30, 70)
 * Symbols: V height of the hands above the floor, cm (in)
 * Valid: V ≥ 0
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, p. 10
 * Example: verticalMultiplier(100) → 0.925
 * Example: verticalMultiplier(176) → 0
 */
export function verticalMultiplier(height: number, units: LiftingUnits = 'metric'): number {
  if (!(height >= 0)) throw new RangeError(`Hands are not below the floor: ${height}.`);
  const { knuckleHeight, heightSlope, highest } = LIFTING_CONSTANTS[units];
  return height > highest ? 0 : 1 - heightSlope * Math.abs(height - knuckleHeight);
}
