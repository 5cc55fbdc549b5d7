import { needWork, type TipBox, type Work } from './tip-box.ts';

type AroundWork = Pick<
  Work,
  'radius' | 'faceOffset' | 'eccentricity' | 'bottom' | 'top' | 'toolMargin' | 'depthSide'
>;

/**
 * Where the tip has to come for work all around a level rotary axis (single-axis table, indexer), mm.
 * Here u runs along the rotary axis from the faceplate, and w = 0 is that axis.
 *
 * Formula: u in [f, f + H + t], v within ±(R + t), w in [q − e − depthSide, max(q, r) + e]
 * Symbols: f bottom (distance from the faceplate), f + H top, R = r + e radius, t toolMargin, q faceOffset (the nearest face; round: r), e eccentricity, depthSide depth from the side: mm
 * Valid: sizes ≥ 0, top ≥ bottom
 * Source: geometry: what is worked on is turned up to the tool, and the tool may cross the whole width of the work
 * Example: aroundBox({ radius: 55, faceOffset: 40, eccentricity: 5, bottom: 30, top: 130, toolMargin: 10, depthSide: 20 }) → { u: [30, 140], v: [-65, 65], w: [15, 55] }
 */
export function aroundBox(work: AroundWork): TipBox {
  needWork(work);
  const half = work.radius + work.toolMargin;
  return {
    u: [work.bottom, work.top + work.toolMargin],
    v: [-half, half],
    w: [
      work.faceOffset - work.eccentricity - work.depthSide,
      Math.max(work.faceOffset + work.eccentricity, work.radius),
    ],
  };
}
