/**
 * The speed of the rotary axis that moves the surface at the feed, rev/min.
 *
 * Formula: n = v_f/(2·π·r)
 * Symbols: v_f contour feed, mm/min; r distance of the contour from the axis, mm
 * Valid: v_f ≥ 0, r ≥ 0 (without bound as r goes to 0)
 * Source: length of a circle
 * Example: rotarySpeedForContour(2000, 50) → 6.36619772368
 */
export function rotarySpeedForContour(feed: number, radius: number): number {
  if (feed < 0 || radius < 0) {
    throw new RangeError(`Neither feed nor radius can be negative: ${feed} mm/min, ${radius} mm.`);
  }
  return feed / (2 * Math.PI * radius);
}
