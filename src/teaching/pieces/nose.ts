import { machine } from '../../rules/inputs/machine.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import { setting } from '../../rules/inputs/setting.ts';
import type { Case } from '../../rules/judging/case.ts';
import { isUpright } from '../../rules/sides/base.ts';
import { step } from '../formula/formula-source.ts';
import type { Piece } from './piece.ts';

/** The spindle nose at one end of the Z travel, above the tilt axis (where nothing tilts, above the rotary axis): gives z. */
export function noseAt(of: Case, end: 'noseBottom' | 'noseTop'): Piece {
  const words = `nose at the ${end === 'noseTop' ? 'top' : 'bottom'} of Z, above the tilt axis (the rotary axis where nothing tilts)`;
  if (of.machine.builtIn)
    return {
      given: { N: machine[end], p: rotary.faceOffset },
      steps: [step('z', 'mm', words, 'N + p')],
    };
  if (isUpright(of)) return { given: { N: machine[end] }, steps: [step('z', 'mm', words, 'N')] };
  return {
    given: {
      N: machine[end],
      up: setting.raised,
      pl: setting.plateThickness,
      H: rotary.centerHeight,
    },
    steps: [step('z', 'mm', words, 'N + up - pl - H')],
  };
}
