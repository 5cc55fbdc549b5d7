/**
 * The way in which an axis stops from a feed, mm. To reach the feed and stop again takes twice as much.
 *
 * Formula: d = v²/(2·a), v = v_f/60
 * Symbols: v_f feed, mm/min; a acceleration, m/s²
 * Valid: v_f ≥ 0, a ≥ 0 (without bound as a goes to 0)
 * Source: motion at constant acceleration
 * Example: stoppingDistance(6000, 1) → 5
 */
export function stoppingDistance(feed: number, acceleration: number): number {
  if (feed < 0 || acceleration < 0) {
    throw new RangeError(
      `Neither feed nor acceleration can be negative: ${feed} mm/min, ${acceleration} m/s².`,
    );
  }
  return feed === 0 ? 0 : (feed / 60) ** 2 / (2 * acceleration * 1000);
}
