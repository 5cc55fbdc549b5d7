const DEGREE = Math.PI / 180;
const QUARTER_SINES = [0, 1, 0, -1] as const;

function exactQuarter(angle: number, shift: number): number | undefined {
  if (angle % 90 !== 0) return undefined;
  const quarter = ((angle / 90) % 4) + 4 + shift;
  return QUARTER_SINES[quarter % 4];
}

/**
 * The sine of an angle in degrees, exact at every quarter turn.
 *
 * Formula: sin θ
 * Symbols: θ angle, degrees
 * Valid: any finite angle; NaN for an infinite one
 * Source: definition; a sine of 180° that is not quite zero would turn an infinite length into nonsense
 * Example: sine(30) → 0.5
 */
export function sine(angle: number): number {
  return exactQuarter(angle, 0) ?? Math.sin(angle * DEGREE);
}

/**
 * The cosine of an angle in degrees, exact at every quarter turn.
 *
 * Formula: cos θ
 * Symbols: θ angle, degrees
 * Valid: any finite angle; NaN for an infinite one
 * Source: definition
 * Example: cosine(270) → 0
 */
export function cosine(angle: number): number {
  return exactQuarter(angle, 1) ?? Math.cos(angle * DEGREE);
}
