import { type Cylinder, cornersSeenFromAbove, cornersSeenFromBelow, sweptBox } from './swept-box.ts';
import { needWork, type TipBox } from './tip-box.ts';
import { unionBox } from './union-box.ts';

/**
 * Where the tip has to come when the work is cut while it tilts from 0 to the greatest angle, mm.
 *
 * Formula: the box around the slant boxes of every θ ≤ min(φ, 90) and the undercut boxes of every θ from 90 to φ
 * Symbols: θ tilt, φ greatest tilt, degrees; of the work radius, eccentricity, bottom, top, toolMargin: mm
 * Valid: 0 ≤ φ ≤ 180; sizes ≥ 0; e ≤ R; top ≥ bottom
 * Source: geometry; each corner is followed over the whole tilt, the angles where it is highest or farthest out included
 * Example: simultaneousBox({ radius: 30, eccentricity: 0, bottom: 0, top: 40, toolMargin: 10 }, 90) → { u: [-40, 40], v: [-60, 40], w: [-30, 50] }
 */
export function simultaneousBox(work: Cylinder, greatestTilt: number): TipBox {
  needWork(work);
  if (greatestTilt < 0 || greatestTilt > 180) {
    throw new RangeError(`The greatest tilt lies between 0° and 180°, not at ${greatestTilt}°.`);
  }
  const slants = sweptBox(work, cornersSeenFromAbove(work), 0, Math.min(greatestTilt, 90));
  if (!(greatestTilt > 90)) return slants;
  return unionBox([slants, sweptBox(work, cornersSeenFromBelow(work), 90, greatestTilt)]);
}
