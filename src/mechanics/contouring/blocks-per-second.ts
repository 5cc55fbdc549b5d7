/**
 * How many blocks of the program the control has to work off each second.
 *
 * Formula: N = v_f/60/s
 * Symbols: v_f feed, mm/min; s length of a segment, mm
 * Valid: v_f ≥ 0, s ≥ 0 (without bound as s goes to 0)
 * Source: time for a segment
 * Example: blocksPerSecond(5000, 0.1) → 833.333333333
 */
export function blocksPerSecond(feed: number, segment: number): number {
  if (feed < 0 || segment < 0) {
    throw new RangeError(`Neither feed nor segment can be negative: ${feed} mm/min, ${segment} mm.`);
  }
  return feed / 60 / segment;
}
