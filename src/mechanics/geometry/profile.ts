/** What the profile of the work is made of, mm. */
export interface ProfileSizes {
  /** R = r + e: plan radius of the part plus eccentricity */
  readonly radius: number;
  /** B: bottom of the part above the tilt axis */
  readonly bottom: number;
  /** T: top of the part above the tilt axis */
  readonly top: number;
  /** F/2: plan radius of the fixture, 0 without one */
  readonly fixtureRadius: number;
  /** p: height of the faceplate above the tilt axis at tilt 0, negative where it is sunk */
  readonly faceHeight: number;
}

/** A point of the profile: v beside the rotary axis, w above the tilt axis at tilt 0, mm. */
export interface ProfilePoint {
  readonly name: 'part top' | 'part bottom' | 'fixture top' | 'fixture bottom' | 'faceplate';
  readonly v: number;
  readonly w: number;
}

/**
 * The outermost points of the work on one side of the rotary axis. The work turns about that axis, so
 * each point stands at −v as well.
 *
 * Formula: (R, T), (R, B), (F/2, B), (F/2, p), and with the faceplate (P/2, p)
 * Symbols: R radius, B bottom, T top, F/2 fixtureRadius, p faceHeight, P/2 faceplateRadius: mm
 * Valid: radii ≥ 0, top ≥ bottom
 * Source: geometry of part, fixture and faceplate as cylinders on one axis
 * Example: profilePoints({ radius: 5, bottom: 2, top: 9, fixtureRadius: 6, faceHeight: 1 }, 8).length → 5
 */
export function profilePoints(sizes: ProfileSizes, faceplateRadius?: number): readonly ProfilePoint[] {
  const { radius, bottom, top, fixtureRadius, faceHeight } = sizes;
  if (radius < 0 || fixtureRadius < 0 || (faceplateRadius ?? 0) < 0) {
    throw new RangeError('A radius of the profile cannot be negative.');
  }
  if (top < bottom)
    throw new RangeError(`The top of the work cannot lie below its bottom: ${top} < ${bottom} mm.`);
  const points: ProfilePoint[] = [
    { name: 'part top', v: radius, w: top },
    { name: 'part bottom', v: radius, w: bottom },
    { name: 'fixture top', v: fixtureRadius, w: bottom },
    { name: 'fixture bottom', v: fixtureRadius, w: faceHeight },
  ];
  if (faceplateRadius !== undefined) points.push({ name: 'faceplate', v: faceplateRadius, w: faceHeight });
  return points;
}
