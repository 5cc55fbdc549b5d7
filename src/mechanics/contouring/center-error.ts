import { sine } from '../geometry/sine-and-cosine.ts';

/**
 * How far the work is out of place after a turn, when the center of rotation is not where it is believed
 * to be; in the unit of the error.
 *
 * Formula: e = 2·e_c·|sin(θ/2)|
 * Symbols: e_c error of the known center, mm; θ turn, degrees
 * Valid: e_c ≥ 0, any turn
 * Source: chord of the circle on which the false center moves about the true one; a known source of error on rotary tables, doi 10.1177/09544054211019668 (abstract)
 * Example: centerError(0.02, 60) → 0.02
 */
export function centerError(error: number, turn: number): number {
  if (error < 0) throw new RangeError(`An error is given without sign: ${error} mm.`);
  const factor = Math.abs(sine(turn / 2));
  return factor === 0 ? 0 : 2 * error * factor;
}
