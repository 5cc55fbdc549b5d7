import { cosine, sine } from './sine-and-cosine.ts';

/** A direction that does not count gives nothing, however far away the point may be. */
const part = (length: number, factor: number): number => (factor === 0 ? 0 : length * factor);

/**
 * How high a point of the work stands above the tilt axis once the work is tilted, mm.
 * A positive tilt leans the work's top toward −v.
 *
 * Formula: w′ = v·sin θ + w·cos θ
 * Symbols: v level distance from the tilt axis at tilt 0, mm; w height above it at tilt 0, mm; θ tilt, degrees
 * Valid: any v, w and finite θ; an infinite coordinate counts only where its factor is not zero
 * Source: rotation in a plane; same as the Z row of the documented A-C table-table equations (R. du Preez)
 * Example: heightAt(50, 20, 30) → 42.3205080757
 */
export function heightAt(v: number, w: number, tilt: number): number {
  return part(v, sine(tilt)) + part(w, cosine(tilt));
}

/**
 * How far a point of the work stands from the tilt axis, level and across it, once the work is tilted, mm.
 *
 * Formula: v′ = v·cos θ − w·sin θ
 * Symbols: v level distance from the tilt axis at tilt 0, mm; w height above it at tilt 0, mm; θ tilt, degrees
 * Valid: any v, w and finite θ; an infinite coordinate counts only where its factor is not zero
 * Source: rotation in a plane; same as the Y row of the documented A-C table-table equations (R. du Preez)
 * Example: reachAt(50, 20, 30) → 33.3012701892
 */
export function reachAt(v: number, w: number, tilt: number): number {
  return part(v, cosine(tilt)) - part(w, sine(tilt));
}
