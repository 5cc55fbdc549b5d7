import { LIFTING_CONSTANTS, type LiftingUnits } from './lifting-units.ts';

/**
 * Distance multiplier: the share of the load constant that is left for how far the load is raised or lowered.
 *
 * Formula: DM = 0.82 + 4.5/D; 1 for D < 25; 0 for D > 175 (in inches 0.82 + 1.8/D, 10, 70)
 * Symbols: D vertical travel of the hands, cm (in)
 * Valid: D ≥ 0
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, p. 11; its Table 3 prints .86 at 130 cm where the formula gives .8546: the formula governs
 * Example: distanceMultiplier(40) → 0.9325
 * Example: distanceMultiplier(130) → 0.854615384615
 */
export function distanceMultiplier(travel: number, units: LiftingUnits = 'metric'): number {
  if (!(travel >= 0)) throw new RangeError(`A travel is taken without its sign: ${travel}.`);
  const { distanceConstant, shortest, tallest } = LIFTING_CONSTANTS[units];
  if (travel > tallest) return 0;
  return travel <= shortest ? 1 : 0.82 + distanceConstant / travel;
}
