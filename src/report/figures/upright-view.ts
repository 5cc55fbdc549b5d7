import type { Arrangement } from '../../rules/decision.ts';
import { plain, type Rows } from './known-stack.ts';
import type { TiltedView } from './tilted-view.ts';

/**
 * A single axis that stands upright before a level spindle. It is laid out like a level axis, the spindle above, and laid over
 * afterwards; heights are counted from the axis itself. Null where it does not stand so, or nobody knows where.
 */
export function uprightView({ place, plates }: Arrangement, { machine, rotary }: Rows): TiltedView | null {
  if (machine.spindle !== 'horizontal' || rotary === null || rotary.tilt !== null || place === null)
    return null;
  if (plain(rotary.faceOffset) === null) return null;
  return {
    level: 'y',
    seenFrom: 'from the side, the spindle on the right',
    sign: 1,
    axis: 0,
    place: null,
    plates: plates.reduce((sum, { thickness }) => sum + thickness, 0),
    laidOver: true,
  };
}
