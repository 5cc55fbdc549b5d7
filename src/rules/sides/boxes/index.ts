import { partInput } from '../../inputs/input.ts';
import type { ApproachCase, Case, PartCase } from '../../judging/case.ts';
import { keyOf, once } from '../../judging/memo.ts';
import type { Term } from '../../judging/term.ts';
import { facesOf } from '../stack.ts';
import { aroundBoxTerms, wallBoxTerms } from './around.ts';
import type { BoxTerms } from './box-terms.ts';
import { sideBoxTerms } from './side.ts';
import { simultaneousBoxTerms } from './simultaneous.ts';
import { slantBoxTerms } from './slant.ts';
import { topBoxTerms } from './top.ts';
import { undercutBoxTerms } from './undercut.ts';

/** Every box of the part on this class of rotary; none where the rotary reaches none of its sides. */
export function boxesOf(of: Case): readonly BoxTerms[] {
  if (of.part === null) return [];
  const { part, memo } = of;
  return once(memo, memo.boxes, 'boxes', keyOf(['part', 'rotary'], of.keys), part.slot, () =>
    freshBoxes(of, part),
  );
}

function freshBoxes(of: Case, part: PartCase): readonly BoxTerms[] {
  if (of.rotary.axes === 1) return part.approaches.some(isAround) ? [aroundBoxTerms(of)] : [];
  const boxes = part.approaches.flatMap((approach) => tiltedBoxes(of, approach));
  return part.motion === 'simultaneous' ? [...boxes, simultaneousBoxTerms()] : boxes;
}

/** One end of all the boxes: the terms whose greatest (or least) is the part's own. */
export const endOf =
  (end: 'uLow' | 'uHigh' | 'vLow' | 'vHigh' | 'wLow' | 'wHigh') =>
  (of: Case): readonly Term[] =>
    boxesOf(of).flatMap((box) => box[end]);

const isAround = (approach: ApproachCase): boolean => approach.kind === 'around' || approach.kind === 'sides';

function tiltedBoxes(of: Case, approach: ApproachCase): readonly BoxTerms[] {
  switch (approach.kind) {
    case 'top':
      return [topBoxTerms()];
    case 'sides':
      return facesOf(of).map(sideBoxTerms);
    case 'around':
      return [wallBoxTerms(of)];
    case 'slant':
      return [slantBoxTerms(partInput('slant angle', '°', [1, 89], () => approach.angle))];
    case 'undercut':
      return [undercutBoxTerms(partInput('undercut angle', '°', [91, 150], () => approach.angle))];
  }
}

export type { BoxTerms };
