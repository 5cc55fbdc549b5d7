import { distanceFromAxis } from './distance.ts';
import { heightAt, reachAt } from './rotate.ts';

const toDegrees = (radians: number): number => (radians * 180) / Math.PI;

/** Is the angle, or the angle with whole turns added, between the two tilts? */
function isSwept(angle: number, from: number, to: number): boolean {
  return angle + 360 * Math.ceil((from - angle) / 360) <= to;
}

function needOrder(from: number, to: number): void {
  if (from > to) throw new RangeError(`A tilt cannot run from ${from}° up to ${to}°.`);
}

/**
 * The greatest height above the tilt axis that a point takes on while the tilt goes through a range, mm.
 *
 * Formula: max over θ of v·sin θ + w·cos θ: √(v² + w²) where θ = atan2(v, w) is swept, else at an end
 * Symbols: v, w the point at tilt 0, mm; from, to the range of tilt, degrees
 * Valid: any v and w; from ≤ to
 * Source: v·sin θ + w·cos θ = √(v² + w²)·cos(θ − atan2(v, w))
 * Example: greatestHeight(30, 40, 0, 90) → 50
 */
export function greatestHeight(v: number, w: number, from: number, to: number): number {
  needOrder(from, to);
  const ends = Math.max(heightAt(v, w, from), heightAt(v, w, to));
  return isSwept(toDegrees(Math.atan2(v, w)), from, to) ? Math.max(ends, distanceFromAxis(v, w)) : ends;
}

/**
 * The least height above the tilt axis that a point takes on while the tilt goes through a range, mm.
 *
 * Formula: min over θ of v·sin θ + w·cos θ: −√(v² + w²) where θ = atan2(−v, −w) is swept, else at an end
 * Symbols: v, w the point at tilt 0, mm; from, to the range of tilt, degrees
 * Valid: any v and w; from ≤ to
 * Source: the greatest height of the point opposite, with the sign turned
 * Example: leastHeight(30, 40, 0, 90) → 30
 */
export function leastHeight(v: number, w: number, from: number, to: number): number {
  return 0 - greatestHeight(-v, -w, from, to);
}

/**
 * The greatest level distance to the +v side that a point takes on while the tilt goes through a range, mm.
 *
 * Formula: max over θ of v·cos θ − w·sin θ: √(v² + w²) where θ = atan2(−w, v) is swept, else at an end
 * Symbols: v, w the point at tilt 0, mm; from, to the range of tilt, degrees
 * Valid: any v and w; from ≤ to
 * Source: v·cos θ − w·sin θ = √(v² + w²)·cos(θ − atan2(−w, v))
 * Example: greatestReach(30, -40, 0, 90) → 50
 */
export function greatestReach(v: number, w: number, from: number, to: number): number {
  needOrder(from, to);
  const ends = Math.max(reachAt(v, w, from), reachAt(v, w, to));
  return isSwept(toDegrees(Math.atan2(-w, v)), from, to) ? Math.max(ends, distanceFromAxis(v, w)) : ends;
}

/**
 * The farthest to the −v side that a point comes while the tilt goes through a range, mm, as a signed v′.
 *
 * Formula: min over θ of v·cos θ − w·sin θ: −√(v² + w²) where θ = atan2(w, −v) is swept, else at an end
 * Symbols: v, w the point at tilt 0, mm; from, to the range of tilt, degrees
 * Valid: any v and w; from ≤ to
 * Source: the greatest reach of the point opposite, with the sign turned
 * Example: leastReach(-30, 40, 0, 90) → -50
 */
export function leastReach(v: number, w: number, from: number, to: number): number {
  return 0 - greatestReach(-v, -w, from, to);
}
