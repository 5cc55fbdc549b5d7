import { aroundBox } from '../../mechanics/geometry/around-box.ts';
import type { TipBox } from '../../mechanics/geometry/tip-box.ts';
import { unionBox } from '../../mechanics/geometry/union-box.ts';
import type { Part } from '../../questions/answers.ts';
import { type KnownPart, plain } from './known-stack.ts';

/**
 * Where the tips come around a single axis: u along it from the faceplate, w out from it. Null where none of its sides
 * is cut, or a size is not known.
 */
export function aroundTips(
  { approaches, depthSide }: Part,
  { radius, eccentricity, height, fixtureHeight: f, faces }: KnownPart,
  toolMargin: number,
): TipBox | null {
  const depth = plain(depthSide);
  const isCut = approaches !== 'unknown' && approaches.some((each) => each === 'around' || each === 'sides');
  if (!isCut || radius === null || eccentricity === null || height === null || f === null || depth === null)
    return null;
  const work = { radius, eccentricity, bottom: f, top: f + height, toolMargin, depthSide: depth };
  const known = faces.filter((face) => face !== null);
  if (known.length < faces.length) return null;
  return unionBox(known.map((faceOffset) => aroundBox({ ...work, faceOffset })));
}
