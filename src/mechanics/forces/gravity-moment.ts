import { heightAt } from '../geometry/rotate.ts';

/** Standard gravity, m/s². */
const GRAVITY = 9.80665;

/** Part and fixture together, each mass times its distance. */
export interface TiltedMass {
  /** |Σ m·z|: mass times height of its center above the tilt axis at tilt 0, kg·mm */
  readonly massMoment: number;
  /** Σ m·e: mass times distance of its center from the rotary axis, kg·mm */
  readonly eccentricMassMoment: number;
  /** greatest tilt, degrees */
  readonly tilt: number;
}

/**
 * The greatest moment of gravity about a level tilt axis while the work tilts from 0 to an angle, N·m.
 *
 * Formula: max over θ from 0 to φ of g·(A·sin θ + E·|cos θ|)/1000: g·√(A² + E²)/1000 where φ reaches θ = atan2(A, E), else at φ
 * Symbols: A massMoment, kg·mm; E eccentricMassMoment, kg·mm; φ tilt, degrees; g = 9.80665 m/s²
 * Valid: A ≥ 0, E ≥ 0, 0 ≤ φ ≤ 180; the sum is symmetric about 90, so it is never greater beyond
 * Source: statics: m·g·(e·cos θ + h·sin θ)
 * Example: worstGravityMoment({ massMoment: 3000, eccentricMassMoment: 400, tilt: 90 }) → 29.6803086149
 */
export function worstGravityMoment({ massMoment, eccentricMassMoment, tilt }: TiltedMass): number {
  if (massMoment < 0 || eccentricMassMoment < 0) {
    throw new RangeError(
      `The mass moments are taken without sign: ${massMoment} and ${eccentricMassMoment} kg·mm.`,
    );
  }
  if (tilt < 0 || tilt > 180)
    throw new RangeError(`The greatest tilt lies between 0° and 180°, not at ${tilt}°.`);
  const worst = (Math.atan2(massMoment, eccentricMassMoment) * 180) / Math.PI;
  const moment =
    tilt >= worst
      ? Math.hypot(massMoment, eccentricMassMoment)
      : heightAt(massMoment, eccentricMassMoment, tilt);
  return (GRAVITY * moment) / 1000;
}
