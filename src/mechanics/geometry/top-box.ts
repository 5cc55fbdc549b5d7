import { needWork, type TipBox, type Work } from './tip-box.ts';

/**
 * Where the tip has to come for work from the top, tilt 0, mm.
 *
 * Formula: u and v within ±(R + t), w′ in [T − depthTop, T]
 * Symbols: R radius (plan radius + eccentricity), t toolMargin, T top, depthTop depth from the top: mm
 * Valid: radius, toolMargin and depthTop ≥ 0
 * Source: geometry of the top disc of the work's cylinder; that the tool may overhang it by half the largest cutter is an assumption
 * Example: topBox({ radius: 50, top: 200, toolMargin: 10, depthTop: 30 }) → { u: [-60, 60], v: [-60, 60], w: [170, 200] }
 */
export function topBox(work: Pick<Work, 'radius' | 'top' | 'toolMargin' | 'depthTop'>): TipBox {
  needWork(work);
  const half = work.radius + work.toolMargin;
  return {
    u: [-half, half],
    v: [-half, half],
    w: [work.top - work.depthTop, work.top],
  };
}
