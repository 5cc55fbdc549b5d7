import type { BuiltIn } from '../../catalog/catalog.ts';
import type { Case } from '../judging/case.ts';
import { negated, type Term } from '../judging/term.ts';
import { alongX } from './base.ts';
import { boxesOf } from './boxes/index.ts';
import { pointsBack } from './points-back.ts';

/** The tips of the part along X or Y of the machine, beside the rotary center. */
export function tipEnds(
  of: Case,
  axis: 'x' | 'y',
): { readonly low: readonly Term[]; readonly high: readonly Term[] } {
  const along = (axis === 'x') === alongX(of);
  const boxes = boxesOf(of);
  const low = boxes.flatMap((box) => (along ? box.uLow : box.vLow));
  const high = boxes.flatMap((box) => (along ? box.uHigh : box.vHigh));
  return pointsBack(of.mounting, turnedRound(of), axis)
    ? { low: high.map(negated), high: low.map(negated) }
    : { low, high };
}

const AWAY: ReadonlySet<BuiltIn['leans']> = new Set(['toward-column', 'toward-right', 'upward']);

/**
 * Does the frame of the rotary point the other way along the machine's axes? Unturned, the top of the work
 * leans to the front (tilt axis along X) or to the right (along Y). A built-in table leans as stated at positive tilt,
 * the other way where its greater tilt is the negative one.
 */
export function turnedRound(of: Case): boolean {
  if (of.mounting !== 'built-in') return of.place.turned;
  const { builtIn } = of.machine.row;
  return builtIn !== null && isTurnedRound(builtIn);
}

/** The same of a built-in table by its row. */
export function isTurnedRound({ leans, tilt }: Pick<BuiltIn, 'leans' | 'tilt'>): boolean {
  const negativeIsGreater = Array.isArray(tilt) && -tilt[0] > tilt[1];
  return AWAY.has(leans) !== negativeIsGreater;
}
