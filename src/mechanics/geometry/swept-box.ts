import { greatestHeight, greatestReach, leastHeight, leastReach } from './swept-extremes.ts';
import type { TipBox, Work } from './tip-box.ts';

/** A point of the work beside the rotary axis at tilt 0: v level, w up, mm. */
export type Corner = readonly [v: number, w: number];

/** The cylinder around the part, seen by the tool. */
export type Cylinder = Pick<Work, 'radius' | 'eccentricity' | 'bottom' | 'top' | 'toolMargin'>;

/**
 * The corners of what the tool sees of a cylinder at tilts up to 90: the top disc and the half wall that
 * faces the tool. Every other point that it sees lies between these, at every tilt and every turn.
 *
 * Formula: (−R, T), (R, T), (−e, B), (R, B)
 * Symbols: R radius (plan radius + e), e eccentricity, B bottom, T top: mm
 * Valid: 0 ≤ e ≤ R, top ≥ bottom
 * Source: a wall is seen where its outward normal does not point away from the tool, so from the part's own middle on, which stands at −e at the worst; a disc where cos θ ≥ 0
 * Example: cornersSeenFromAbove({ radius: 5, eccentricity: 1, bottom: 1, top: 3, toolMargin: 0 }) → [[-5, 3], [5, 3], [-1, 1], [5, 1]]
 */
export function cornersSeenFromAbove({ radius, eccentricity, bottom, top }: Cylinder): readonly Corner[] {
  return [
    [-radius, top],
    [radius, top],
    [-eccentricity, bottom],
    [radius, bottom],
  ];
}

/**
 * The corners of what the tool sees of a cylinder at tilts from 90 on: the half wall that faces the tool.
 *
 * Formula: (−e, B), (R, B), (−e, T), (R, T)
 * Symbols: R radius (plan radius + e), e eccentricity, B bottom, T top: mm
 * Valid: 0 ≤ e ≤ R, top ≥ bottom
 * Source: as from above; the top disc has turned away
 * Example: cornersSeenFromBelow({ radius: 5, eccentricity: 1, bottom: 1, top: 3, toolMargin: 0 }) → [[-1, 1], [5, 1], [-1, 3], [5, 3]]
 */
export function cornersSeenFromBelow({ radius, eccentricity, bottom, top }: Cylinder): readonly Corner[] {
  return [
    [-eccentricity, bottom],
    [radius, bottom],
    [-eccentricity, top],
    [radius, top],
  ];
}

/**
 * The box around everything that lies between the corners, while the tilt goes through a range; widened
 * level by the tool margin, mm.
 *
 * Formula: u within ±(R + t); v′ in [min − t, max + t] and w′ in [min, max] over corners and tilts
 * Symbols: R radius, t toolMargin: mm; from, to the range of tilt, degrees
 * Valid: from ≤ to
 * Source: at each tilt v′ and w′ are linear in (v, w), so that their extremes stand in corners
 * Example: sweptBox({ radius: 5, eccentricity: 0, bottom: 1, top: 3, toolMargin: 0 }, [[0, 3], [4, 0]], 0, 90) → { u: [-5, 5], v: [-3, 4], w: [0, 4] }
 */
export function sweptBox(work: Cylinder, corners: readonly Corner[], from: number, to: number): TipBox {
  const half = work.radius + work.toolMargin;
  const over = (extreme: typeof greatestHeight): number[] => corners.map(([v, w]) => extreme(v, w, from, to));
  return {
    u: [-half, half],
    v: [Math.min(...over(leastReach)) - work.toolMargin, Math.max(...over(greatestReach)) + work.toolMargin],
    w: [Math.min(...over(leastHeight)), Math.max(...over(greatestHeight))],
  };
}
