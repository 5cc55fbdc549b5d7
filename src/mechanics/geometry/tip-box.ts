/** A stretch of one coordinate, mm. */
export type Span = readonly [low: number, high: number];

/**
 * Where the tool's tip has to come, in the frame of the rotary: the origin is where tilt axis and rotary
 * axis meet; u along the tilt axis, v level and across it, w up along the tool. All in mm.
 */
export interface TipBox {
  readonly u: Span;
  readonly v: Span;
  readonly w: Span;
}

/** The work as the tip boxes see it: everything in mm, as it stands at tilt 0. A box takes what it needs of it. */
export interface Work {
  /** R = r + e: plan radius plus eccentricity */
  readonly radius: number;
  /** B: bottom of the part above the tilt axis; on a single-axis table its distance from the faceplate */
  readonly bottom: number;
  /** T: top of the part above the tilt axis; on a single-axis table the distance of its far end from the faceplate */
  readonly top: number;
  /** t: half the largest cutter */
  readonly toolMargin: number;
  /** how deep the tool goes in from the top */
  readonly depthTop: number;
  /** how deep the tool goes in from a side */
  readonly depthSide: number;
  /** q: distance of the side face from the part's axis */
  readonly faceOffset: number;
  /** s: level width of the side face */
  readonly faceWidth: number;
  /** e: distance of the part's axis from the rotary axis, its direction unknown */
  readonly eccentricity: number;
}

/**
 * Throws where a size of the work cannot be; sizes that are not there, infinite or NaN pass.
 *
 * Formula: sizes ≥ 0, T ≥ B, R ≥ e
 * Symbols: B bottom, T top, R radius, e eccentricity, and the other sizes of the work, mm
 * Valid: any work
 * Source: what a body can be
 * Example: needWork({ radius: 50, bottom: -20, top: 80 }) → undefined
 */
export function needWork(work: Partial<Work>): void {
  for (const size of [
    'radius',
    'toolMargin',
    'depthTop',
    'depthSide',
    'faceWidth',
    'eccentricity',
  ] as const) {
    const value = work[size];
    if (value !== undefined && value < 0) throw new RangeError(`${size} cannot be negative: ${value} mm.`);
  }
  const { bottom, top, radius, eccentricity } = work;
  if (radius !== undefined && eccentricity !== undefined && radius < eccentricity) {
    throw new RangeError(
      `The radius includes the eccentricity: ${radius} mm is less than ${eccentricity} mm.`,
    );
  }
  if (bottom !== undefined && top !== undefined && top < bottom) {
    throw new RangeError(`The top of the work cannot lie below its bottom: ${top} mm below ${bottom} mm.`);
  }
}
