import { LIFTING_CONSTANTS, type LiftingUnits } from './lifting-units.ts';

/** Up to one hour, more than one to two, more than two to eight. */
export type LiftingDuration = 'short' | 'moderate' | 'long';

type Row = readonly [
  frequency: number,
  shortLow: number,
  shortHigh: number,
  moderateLow: number,
  moderateHigh: number,
  longLow: number,
  longHigh: number,
];

/**
 * Frequency multipliers by lifts a minute, duration and height of the hands at the origin.
 *
 * Formula: table
 * Symbols: lifts a minute; then hands below and from 75 cm (30 in) for up to one, two and eight hours
 * Valid: rows from 0.2 to 15 lifts a minute
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, Table 5
 * Example: FREQUENCY_ROWS[0] → [0.2, 1, 1, 0.95, 0.95, 0.85, 0.85]
 */
export const FREQUENCY_ROWS: readonly Row[] = [
  [0.2, 1, 1, 0.95, 0.95, 0.85, 0.85],
  [0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
  [1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
  [2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
  [3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
  [4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
  [5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
  [6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
  [7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
  [8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
  [9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
  [10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
  [11, 0.41, 0.41, 0, 0.23, 0, 0],
  [12, 0.37, 0.37, 0, 0.21, 0, 0],
  [13, 0, 0.34, 0, 0, 0, 0],
  [14, 0, 0.31, 0, 0, 0, 0],
  [15, 0, 0.28, 0, 0, 0, 0],
];

const COLUMN: Readonly<Record<LiftingDuration, 1 | 3 | 5>> = { short: 1, moderate: 3, long: 5 };

/** How often, how long and from how high something is lifted. */
export interface Lifting {
  /** lifts a minute */
  readonly frequency: number;
  readonly duration: LiftingDuration;
  /** of the hands at the origin, cm or in */
  readonly height: number;
}

/**
 * Frequency multiplier: the share of the load constant that is left for how often something is lifted.
 *
 * Formula: table, linear between its rows; F < 0.2 counts as 0.2, F > 15 gives 0
 * Symbols: F lifts a minute; duration short up to 1 h, moderate to 2 h, long to 8 h; V height at the origin, cm (in)
 * Valid: F ≥ 0, V ≥ 0, no more than eight hours
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, Table 5 and p. 7
 * Example: frequencyMultiplier({ frequency: 2.4, duration: 'short', height: 50 }) → 0.898
 */
export function frequencyMultiplier(
  { frequency, duration, height }: Lifting,
  units: LiftingUnits = 'metric',
): number {
  if (!(frequency >= 0 && height >= 0))
    throw new RangeError(`Nothing is lifted ${frequency} times a minute from ${height}.`);
  const column = COLUMN[duration] + (height < LIFTING_CONSTANTS[units].knuckleHeight ? 0 : 1);
  const at = Math.max(0.2, frequency);
  const above = FREQUENCY_ROWS.findIndex(([row]) => row >= at);
  const upper = FREQUENCY_ROWS[above];
  if (upper === undefined) return 0;
  const lower = FREQUENCY_ROWS[above - 1] ?? upper;
  const share = upper[0] === lower[0] ? 1 : (at - lower[0]) / (upper[0] - lower[0]);
  return (lower[column] ?? 0) * (1 - share) + (upper[column] ?? 0) * share;
}
