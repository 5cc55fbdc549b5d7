import { rotary } from '../inputs/rotary.ts';
import type { Case } from '../judging/case.ts';
import { falls, type Input, negated, rises, type Term, term } from '../judging/term.ts';
import { pointsBack } from './points-back.ts';

/** How the frame of the rotary lies on the machine: u along its tilt (or rotary) axis, v across. */
export const alongX = (of: Case): boolean =>
  of.mounting === 'tilt-along-x' ||
  of.mounting === 'axis-along-x' ||
  (of.mounting === 'built-in' && of.machine.row.builtIn?.tiltAxis === 'along-x');

/** A single axis on its back on a horizontal mill: its axis stands upright, its faceplate looks up. */
export const isUpright = ({ rotary: { axes, gravity } }: Case): boolean => axes === 1 && gravity === 'along';

export const onHorizontal = ({ machine }: Case): boolean => machine.row.spindle === 'horizontal';

/**
 * The side of the rotary that stands along X or Y of the table. One on its back stands across its axis along X, and
 * over the depth of the table as deep as it is otherwise high.
 */
export function standsAlong(of: Case, axis: 'x' | 'y'): Input {
  if (isUpright(of)) return axis === 'x' ? rotary.baseAcross : rotary.height;
  return (axis === 'x') === alongX(of) ? rotary.baseAlong : rotary.baseAcross;
}

/**
 * Where the base begins and ends beside the rotary center, in the rotary's own frame. On a level axis the
 * center is the middle of the faceplate, which stands `faceOffset` along the axis from the far end of the base.
 */
const baseAlongHigh = (of: Case): Term =>
  of.rotary.axes === 1
    ? term(
        'near end of the base',
        { length: rises(rotary.baseAlong), p: falls(rotary.faceOffset) },
        (values) => values.length - values.p,
      )
    : term(
        'base',
        { length: rises(rotary.baseAlong), center: falls(rotary.baseCenterAlong) },
        (values) => values.length - values.center,
      );

const baseAlongLow = (of: Case): Term =>
  of.rotary.axes === 1
    ? term('far end of the base', { p: falls(rotary.faceOffset) }, (values) => -values.p)
    : term('base', { center: falls(rotary.baseCenterAlong) }, (values) => -values.center);

const baseAcrossHigh = (): Term =>
  term(
    'base',
    {
      length: rises(rotary.baseAcross),
      center: falls(rotary.baseCenterAcross),
    },
    (values) => values.length - values.center,
  );

const baseAcrossLow = (): Term =>
  term('base', { center: falls(rotary.baseCenterAcross) }, (values) => -values.center);

/** The ends of the base along X or Y of the machine, whichever way the rotary is mounted and turned. */
export function baseEnds(of: Case, axis: 'x' | 'y'): { readonly low: Term; readonly high: Term } {
  const along = (axis === 'x') === alongX(of);
  const low = along ? baseAlongLow(of) : baseAcrossLow();
  const high = along ? baseAlongHigh(of) : baseAcrossHigh();
  return pointsBack(of.mounting, of.place.turned, axis)
    ? { low: negated(high), high: negated(low) }
    : { low, high };
}
