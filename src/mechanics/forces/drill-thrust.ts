import { sine } from '../geometry/sine-and-cosine.ts';

const HALF_POINT_ANGLE = 59;

/** A twist drill with a point of 118 degrees. */
export interface Drilling {
  /** specific force at a chip thickness of 1 mm, N/mm² */
  readonly kc11: number;
  readonly mc: number;
  /** of the drill, mm */
  readonly diameter: number;
  /** mm a revolution */
  readonly feed: number;
}

/**
 * The force with which a twist drill of 118° point presses along its axis, N. A sharp drill.
 *
 * Formula: F = ½·k_c(h)·(D/2)·f·sin 59°, h = ½·f·sin 59°; that is ½·D·k_c1.1·h^(1 − m_c)
 * Symbols: k_c1.1, m_c of the material, N/mm², none; D drill diameter, mm; f feed a revolution, mm; h chip thickness of one lip, mm
 * Valid: sizes ≥ 0, 0 ≤ m_c < 1
 * Source: common drilling formula with half the specific force; from memory, not verified
 * Example: drillThrust({ kc11: 1500, mc: 0.22, diameter: 10, feed: 0.2 }) → 1103.70352
 */
export function drillThrust({ kc11, mc, diameter, feed }: Drilling): number {
  if (kc11 < 0 || mc < 0 || mc >= 1)
    throw new RangeError(`No material has k_c1.1 ${kc11} N/mm² with m_c ${mc}.`);
  if (diameter < 0 || feed < 0) {
    throw new RangeError(
      `A drill has neither a negative diameter nor a negative feed: ${diameter} mm, ${feed} mm.`,
    );
  }
  if (feed === 0) return 0;
  const h = (feed * sine(HALF_POINT_ANGLE)) / 2;
  return (diameter / 2) * kc11 * h ** (1 - mc);
}
