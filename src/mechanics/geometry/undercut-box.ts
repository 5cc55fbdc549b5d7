import { type Cylinder, cornersSeenFromBelow, sweptBox } from './swept-box.ts';
import { needWork, type TipBox } from './tip-box.ts';

/**
 * Where the tip has to come for an undercut: work at more than 90 degrees from the part's axis, mm.
 *
 * Formula: u within ±(R + t); v′ = v·cos φ − w·sin φ, widened by t, and w′ = v·sin φ + w·cos φ over (−e, B), (R, B), (−e, T), (R, T)
 * Symbols: R radius (plan radius + e), e eccentricity, B bottom, T top, t toolMargin: mm; φ tilt, degrees
 * Valid: 90 ≤ φ ≤ 180 (at 180, where the whole wall is seen edge on, the near half of it); sizes ≥ 0; e ≤ R; top ≥ bottom
 * Source: geometry: the tool sees only the half wall of the work's cylinder that faces it
 * Example: undercutBox({ radius: 50, eccentricity: 0, bottom: 100, top: 200, toolMargin: 10 }, 120) → { u: [-60, 60], v: [-208.205080757, -76.6025403784], w: [-100, -6.69872981078] }
 */
export function undercutBox(work: Cylinder, tilt: number): TipBox {
  needWork(work);
  if (tilt < 90 || tilt > 180)
    throw new RangeError(`An undercut lies between 90° and 180°, not at ${tilt}°.`);
  return sweptBox(work, cornersSeenFromBelow(work), tilt, tilt);
}
