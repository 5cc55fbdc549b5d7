/** The equation is printed twice, and its constants are not conversions of each other: cm and kg, or inches and pounds. */
export type LiftingUnits = 'metric' | 'us';

interface LiftingConstants {
  /** load constant, kg or lb */
  readonly load: number;
  /** hands nearer than this count as this near, cm or in */
  readonly nearest: number;
  readonly farthest: number;
  readonly knuckleHeight: number;
  readonly heightSlope: number;
  readonly highest: number;
  readonly distanceConstant: number;
  readonly shortest: number;
  readonly tallest: number;
}

/**
 * The constants of the lifting equation as they are printed in both systems.
 *
 * Formula: table
 * Symbols: load constant LC, kg or lb; horizontal limits, vertical reference and limit, travel limits, cm or in
 * Valid: one system throughout a computation
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, pp. 7-15
 * Example: LIFTING_CONSTANTS.metric.load → 23
 * Example: LIFTING_CONSTANTS.us.load → 51
 */
export const LIFTING_CONSTANTS: Readonly<Record<LiftingUnits, LiftingConstants>> = {
  metric: {
    load: 23,
    nearest: 25,
    farthest: 63,
    knuckleHeight: 75,
    heightSlope: 0.003,
    highest: 175,
    distanceConstant: 4.5,
    shortest: 25,
    tallest: 175,
  },
  us: {
    load: 51,
    nearest: 10,
    farthest: 25,
    knuckleHeight: 30,
    heightSlope: 0.0075,
    highest: 70,
    distanceConstant: 1.8,
    shortest: 10,
    tallest: 70,
  },
};
