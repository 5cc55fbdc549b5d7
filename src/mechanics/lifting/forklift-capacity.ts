/** A forklift's rating, and where the load really sits. */
export interface ForkliftLoad {
  /** kg, at the load center of the rating */
  readonly rated: number;
  /** of the rating, mm from the face of the forks */
  readonly ratedCenter: number;
  /** of the load, mm from the face of the forks */
  readonly center: number;
}

/**
 * What a forklift lifts at a load center other than the one it is rated for, in the unit of its rating. Rough:
 * the data plate governs.
 *
 * Formula: Q·LC_r/LC for LC > LC_r, else Q
 * Symbols: Q rating; LC_r load center of the rating, LC of the load, both mm
 * Valid: Q ≥ 0, LC_r > 0, LC ≥ 0
 * Source: OSHA eTool on powered industrial trucks, as reprinted; measured from the front axle the loss is smaller
 * Example: forkliftCapacity({ rated: 1500, ratedCenter: 500, center: 600 }) → 1250
 * Example: forkliftCapacity({ rated: 1500, ratedCenter: 500, center: 300 }) → 1500
 */
export function forkliftCapacity({ rated, ratedCenter, center }: ForkliftLoad): number {
  if (!(rated >= 0 && ratedCenter > 0 && center >= 0))
    throw new RangeError(`No such rating: ${rated} at ${ratedCenter} mm, load at ${center} mm.`);
  return center > ratedCenter ? (rated * ratedCenter) / center : rated;
}

/**
 * Load center of a load that is alike all along the forks, mm.
 *
 * Formula: half the length along the forks
 * Symbols: length along the forks, mm
 * Valid: length ≥ 0
 * Source: OSHA eTool on powered industrial trucks, as reprinted
 * Example: loadCenter(1200) → 600
 */
export function loadCenter(length: number): number {
  if (!(length >= 0)) throw new RangeError(`A load is not ${length} mm long.`);
  return length / 2;
}
