import { LIFTING_CONSTANTS, type LiftingUnits } from './lifting-units.ts';

/**
 * Horizontal multiplier: the share of the load constant that is left for how far the hands are from the body.
 *
 * Formula: HM = 25/H; 1 for H < 25; 0 for H > 63 (in inches 10/H, 10, 25)
 * Symbols: H hands before the middle of the ankles, cm (in)
 * Valid: H ≥ 0
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, p. 8
 * Example: horizontalMultiplier(40) → 0.625
 * Example: horizontalMultiplier(64) → 0
 */
export function horizontalMultiplier(distance: number, units: LiftingUnits = 'metric'): number {
  if (!(distance >= 0)) throw new RangeError(`Hands are not behind the body: ${distance}.`);
  const { nearest, farthest } = LIFTING_CONSTANTS[units];
  return distance > farthest ? 0 : nearest / Math.max(nearest, distance);
}
