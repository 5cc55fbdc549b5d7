import type { Case } from '../../rules/judging/case.ts';
import { alongX } from '../../rules/sides/base.ts';
import { turnedRound } from '../../rules/sides/extent.ts';
import { pointsBack } from '../../rules/sides/points-back.ts';
import { tipsOf } from './tips.ts';

export interface Ends {
  readonly low: readonly string[];
  readonly high: readonly string[];
}

/** The formula with its sign turned round. */
export function opposite(formula: string): string {
  if (/^-\([^()]*\)$/.test(formula)) return formula.slice(2, -1);
  if (/^-\w+$/.test(formula)) return formula.slice(1);
  return /^\w+$/.test(formula) ? `-${formula}` : `-(${formula})`;
}

/** The tips of the part along X or Y of the machine, beside the rotary center, as formulas. */
export function tipEndsAlong(of: Case, axis: 'x' | 'y'): Ends {
  const along = (axis === 'x') === alongX(of);
  const { boxes } = tipsOf(of);
  const low = boxes.flatMap((box) => (along ? box.uLow : box.vLow));
  const high = boxes.flatMap((box) => (along ? box.uHigh : box.vHigh));
  return pointsBack(of.mounting, turnedRound(of), axis)
    ? { low: high.map(opposite), high: low.map(opposite) }
    : { low, high };
}
