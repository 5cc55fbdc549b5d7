/** Keeps the rounding of an arc cosine from counting one tooth more than there is. */
const ROUNDING = 1e-9;

/**
 * The greatest number of teeth that are in the cut at once (straight teeth, evenly spaced).
 *
 * Formula: ⌈z·φ_s/360°⌉
 * Symbols: z teeth of the tool; φ_s angle in the cut, degrees
 * Valid: z ≥ 0, 0 ≤ φ_s ≤ 360; 0 where the angle is 0
 * Source: counting; one billionth of a tooth is let go as rounding, but never the first
 * Example: teethInCut(5, 90) → 2
 */
export function teethInCut(teeth: number, angle: number): number {
  if (teeth < 0) throw new RangeError(`A tool cannot have ${teeth} teeth.`);
  if (angle < 0 || angle > 360)
    throw new RangeError(`The angle in the cut lies between 0° and 360°: ${angle}°.`);
  if (angle === 0 || teeth === 0) return 0;
  return Math.max(1, Math.ceil((teeth * angle) / 360 - ROUNDING));
}
