import { machine } from '../inputs/machine.ts';
import { rotary } from '../inputs/rotary.ts';
import { setting } from '../inputs/setting.ts';
import type { Case } from '../judging/case.ts';
import { least } from '../judging/side.ts';
import { falls, rises, type Term, term } from '../judging/term.ts';
import { isUpright } from './base.ts';

/**
 * Heights of the spindle nose above the tilt axis (single-axis: the rotary axis) at both ends of the Z
 * travel. A clearance addition moves both by the same amount and adds no travel (common practice, no
 * source). A built-in table states the nose above its faceplate at tilt 0. On a horizontal mill it is counted from the
 * middle of the table, over which the upright axis stands.
 */
const nose =
  (end: 'noseBottom' | 'noseTop', name: string) =>
  (of: Case): readonly Term[] =>
    of.machine.builtIn
      ? [
          term(
            name,
            { nose: rises(machine[end]), p: rises(rotary.faceOffset) },
            (values) => values.nose + values.p,
          ),
        ]
      : isUpright(of)
        ? [term(name, { nose: rises(machine[end]) }, (values) => values.nose)]
        : [
            term(
              name,
              {
                nose: rises(machine[end]),
                raised: rises(setting.raised),
                plates: falls(setting.plateThickness),
                center: falls(rotary.centerHeight),
              },
              (values) => values.nose + values.raised - values.plates - values.center,
            ),
          ];

export const noseBottomTerms = nose('noseBottom', 'nose at the bottom of Z');

export const NOSE_ROOMS = ['machine', 'rotary', 'additions', 'plates'] as const;
export const noseAtTop = least(NOSE_ROOMS, nose('noseTop', 'nose at the top of Z'));
export const noseAtBottom = least(NOSE_ROOMS, noseBottomTerms);
