import { type Cylinder, cornersSeenFromAbove, sweptBox } from './swept-box.ts';
import { needWork, type TipBox } from './tip-box.ts';

/**
 * Where the tip has to come for work at a slant of up to 90 degrees from the part's axis, mm.
 *
 * Formula: u within ±(R + t); v′ = v·cos φ − w·sin φ, widened by t, and w′ = v·sin φ + w·cos φ over (−R, T), (R, T), (−e, B), (R, B)
 * Symbols: R radius (plan radius + e), e eccentricity, B bottom, T top, t toolMargin: mm; φ tilt, degrees
 * Valid: 0 ≤ φ ≤ 90; sizes ≥ 0; e ≤ R; top ≥ bottom
 * Source: geometry: the tool sees the top disc of the work's cylinder and the half wall that faces it
 * Example: slantBox({ radius: 50, eccentricity: 0, bottom: 100, top: 200, toolMargin: 10 }, 30) → { u: [-60, 60], v: [-153.301270189, 3.30127018922], w: [86.6025403784, 198.205080757] }
 */
export function slantBox(work: Cylinder, tilt: number): TipBox {
  needWork(work);
  if (tilt < 0 || tilt > 90) throw new RangeError(`A slant lies between 0° and 90°, not at ${tilt}°.`);
  return sweptBox(work, cornersSeenFromAbove(work), tilt, tilt);
}
