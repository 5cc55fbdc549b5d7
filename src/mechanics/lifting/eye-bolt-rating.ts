/** Shares of the axial rating at the angles that are printed, degrees from the axis of the bolt. */
const PRINTED: readonly (readonly [angle: number, share: number])[] = [
  [5, 1],
  [15, 0.8],
  [30, 0.65],
  [45, 0.3],
  [90, 0.25],
];

/**
 * What is left of the axial rating of a shouldered eye bolt that is pulled at an angle, as a share.
 *
 * Formula: table 0 to 5° 1, 15° 0.80, 30° 0.65, 45° 0.30, 90° 0.25; between two rows the lower share
 * Symbols: angle from the axis of the bolt, degrees
 * Valid: 0 ≤ angle ≤ 90, a shouldered bolt, pulled in the plane of its eye; a plain bolt is pulled straight only
 * Source: table of rigging suppliers, reprinted; other tables give 25 % at 45°: the maker's data govern
 * Example: eyeBoltRating(45) → 0.3
 * Example: eyeBoltRating(20) → 0.65
 */
export function eyeBoltRating(angle: number): number {
  if (!(angle >= 0 && angle <= 90))
    throw new RangeError(`An eye bolt is pulled between 0° and 90° from its axis, not at ${angle}°.`);
  return PRINTED.find(([printed]) => angle <= printed)?.[1] ?? 0.25;
}
