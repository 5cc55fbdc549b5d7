import { asymmetryMultiplier } from './asymmetry-multiplier.ts';
import { type Coupling, couplingMultiplier } from './coupling-multiplier.ts';
import { distanceMultiplier } from './distance-multiplier.ts';
import { frequencyMultiplier, type LiftingDuration } from './frequency-multiplier.ts';
import { horizontalMultiplier } from './horizontal-multiplier.ts';
import { LIFTING_CONSTANTS, type LiftingUnits } from './lifting-units.ts';
import { verticalMultiplier } from './vertical-multiplier.ts';

/** One lift, looked at where it begins or where it ends. */
export interface Lift {
  /** hands before the ankles, cm or in */
  readonly horizontal: number;
  /** height of the hands at the point looked at, cm or in */
  readonly vertical: number;
  /** height of the hands where the lift begins, cm or in */
  readonly origin: number;
  /** vertical travel, cm or in */
  readonly travel: number;
  /** degrees */
  readonly asymmetry: number;
  /** lifts a minute */
  readonly frequency: number;
  readonly duration: LiftingDuration;
  readonly coupling: Coupling;
}

/**
 * Recommended weight limit: what nearly every healthy person may lift so, kg (lb).
 *
 * Formula: RWL = LC·HM·VM·DM·AM·FM·CM, LC = 23 kg (51 lb)
 * Symbols: HM, VM, DM, AM, FM, CM multipliers for reach, height, travel, turn, frequency and coupling, none
 * Valid: two hands, standing, up to 8 h, room to move; not inside an enclosure, not while carrying, not for what shifts
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, pp. 1-18
 * Example: recommendedWeightLimit({ horizontal: 25, vertical: 75, origin: 75, travel: 25, asymmetry: 0, frequency: 0.2, duration: 'short', coupling: 'good' }) → 23
 * Example: recommendedWeightLimit({ horizontal: 40, vertical: 100, origin: 75, travel: 25, asymmetry: 0, frequency: 0.2, duration: 'short', coupling: 'fair' }) → 13.296875
 */
export function recommendedWeightLimit(of: Lift, units: LiftingUnits = 'metric'): number {
  const cm = units === 'metric' ? 1 : INCH_OF_TABLE;
  return (
    LIFTING_CONSTANTS[units].load *
    horizontalMultiplier(of.horizontal, units) *
    verticalMultiplier(of.vertical, units) *
    distanceMultiplier(of.travel, units) *
    asymmetryMultiplier(of.asymmetry) *
    frequencyMultiplier({ frequency: of.frequency, duration: of.duration, height: of.origin }, units) *
    couplingMultiplier(of.coupling, of.vertical * cm)
  );
}

/** The table of couplings names its line as 75 cm or 30 in: 2.5 cm stand for an inch there. */
const INCH_OF_TABLE = 2.5;
