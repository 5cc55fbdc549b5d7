/** How well the hands hold what is lifted. */
export type Coupling = 'good' | 'fair' | 'poor';

/**
 * The kinds of coupling that the table knows, the best first.
 *
 * Formula: table
 * Symbols: none
 * Valid: the kinds listed
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, Table 7
 * Example: COUPLINGS → ['good', 'fair', 'poor']
 */
export const COUPLINGS = ['good', 'fair', 'poor'] as const satisfies readonly Coupling[];

/** Below this height of the hands, cm, a fair coupling counts as less than a good one. */
const CHEST_HEIGHT = 75;

/**
 * Coupling multiplier: the share of the load constant that is left for how the hands hold the load.
 *
 * Formula: table: good 1.00; fair 0.95 for V < 75, else 1.00; poor 0.90
 * Symbols: V height of the hands above the floor at the point looked at, cm
 * Valid: V ≥ 0
 * Source: Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110, Table 7
 * Example: couplingMultiplier('fair', 75) → 1
 * Example: couplingMultiplier('fair', 74) → 0.95
 */
export function couplingMultiplier(coupling: Coupling, height: number): number {
  if (!(height >= 0)) throw new RangeError(`Hands are not below the floor: ${height} cm.`);
  if (coupling === 'poor') return 0.9;
  return coupling === 'fair' && height < CHEST_HEIGHT ? 0.95 : 1;
}
