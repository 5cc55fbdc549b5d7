import { needWork, type TipBox, type Work } from './tip-box.ts';

type SideWork = Pick<
  Work,
  'faceOffset' | 'faceWidth' | 'eccentricity' | 'bottom' | 'top' | 'toolMargin' | 'depthSide'
>;

/**
 * Where the tip has to come for one side face turned square to the tool, tilt 90, mm.
 *
 * Formula: u within ±(s/2 + e + t), v′ in [−T − t, −B], w′ in [q − e − depthSide, q + e]
 * Symbols: q faceOffset, s faceWidth, e eccentricity, t toolMargin, B bottom, T top, depthSide depth from the side: mm; round: q = r, s = 2r
 * Valid: sizes ≥ 0 and top ≥ bottom
 * Source: geometry of a face at tilt 90; below the part stands the fixture, so the tool overhangs the top only
 * Example: sideBox({ faceOffset: 40, faceWidth: 60, eccentricity: 5, bottom: 100, top: 180, toolMargin: 10, depthSide: 20 }) → { u: [-45, 45], v: [-190, -100], w: [15, 45] }
 */
export function sideBox(work: SideWork): TipBox {
  needWork(work);
  const half = work.faceWidth / 2 + work.eccentricity + work.toolMargin;
  return {
    u: [-half, half],
    v: [-work.top - work.toolMargin, -work.bottom],
    w: [work.faceOffset - work.eccentricity - work.depthSide, work.faceOffset + work.eccentricity],
  };
}
