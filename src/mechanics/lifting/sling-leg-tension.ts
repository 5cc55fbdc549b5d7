/** Legs flatter than this are not to be used, degrees above level. */
const FLATTEST = 30;
/** Legs this near to upright may be counted as upright, degrees from upright. */
const AS_UPRIGHT = 5;

/**
 * Pull on one leg of a sling, in the unit of the load.
 *
 * Formula: T = W/(min(n, 2)·sin α); within 5° of upright sin α counts as 1
 * Symbols: W load, kg or N; n legs, of three or four only two are sure to carry (from memory); α leg above level, degrees
 * Valid: W ≥ 0, n ≥ 1, 30 ≤ α ≤ 90: flatter legs are refused (ASME B30.9, reprinted); one leg hangs upright
 * Source: geometry of the sling, reprinted in rigging sheets; within 5° of upright: 29 CFR 1910.184(b)
 * Example: slingLegTension({ load: 1000, legs: 2, angle: 60 }) → 577.350269190
 * Example: slingLegTension({ load: 1000, legs: 4, angle: 30 }) → 1000
 */
export function slingLegTension(of: {
  readonly load: number;
  readonly legs: number;
  readonly angle: number;
}): number {
  const { load, legs, angle } = of;
  if (!(load >= 0 && legs >= 1)) throw new RangeError(`No sling has ${legs} legs for a load of ${load}.`);
  if (legs < 2) return load;
  if (!isUsableSlingAngle(angle))
    throw new RangeError(`Legs of a sling stand between ${FLATTEST}° and 90°, not at ${angle}°.`);
  const sine = angle >= 90 - AS_UPRIGHT ? 1 : Math.sin((angle * Math.PI) / 180);
  return load / (2 * sine);
}

/**
 * Whether the legs of a sling are steep enough to be used.
 *
 * Formula: 30 ≤ α ≤ 90
 * Symbols: α leg above level, degrees
 * Valid: any angle
 * Source: ASME B30.9: horizontal angles below 30° not recommended, as reprinted by riggers
 * Example: isUsableSlingAngle(29) → false
 */
export function isUsableSlingAngle(angle: number): boolean {
  return angle >= FLATTEST && angle <= 90;
}
