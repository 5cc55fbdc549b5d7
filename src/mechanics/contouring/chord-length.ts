function needArc(radius: number, chordError: number): void {
  if (radius < 0 || chordError < 0) {
    throw new RangeError(`Neither radius nor chord error can be negative: ${radius} mm, ${chordError} mm.`);
  }
}

/**
 * The length of the straight segments that replace an arc and keep the error, mm.
 *
 * Formula: s = 2·√(e·(2·R − e))
 * Symbols: R radius of the arc, mm; e greatest distance of arc and segment, mm
 * Valid: R ≥ 0, 0 ≤ e ≤ 2·R
 * Source: half chord and sagitta; arc segments in an open-source motion controller
 * Example: chordLength(25, 5) → 30
 */
export function chordLength(radius: number, chordError: number): number {
  needArc(radius, chordError);
  if (chordError > 2 * radius) {
    throw new RangeError(`No chord of a circle of ${radius} mm lies ${chordError} mm inside it.`);
  }
  return chordError === 0 ? 0 : 2 * Math.sqrt(chordError * (2 * radius - chordError));
}

/**
 * The same for errors that are small beside the radius, mm; a little long, by e/(4·R) of itself.
 *
 * Formula: s ≈ √(8·R·e)
 * Symbols: R radius of the arc, mm; e greatest distance of arc and segment, mm
 * Valid: R ≥ 0, e ≥ 0; good where e is small beside R
 * Source: the exact length without the square of the error
 * Example: approximateChordLength(25, 0.02) → 2
 */
export function approximateChordLength(radius: number, chordError: number): number {
  needArc(radius, chordError);
  return chordError === 0 || radius === 0 ? 0 : Math.sqrt(8 * radius * chordError);
}
