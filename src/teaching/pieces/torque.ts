import type { Part } from '../../questions/answers.ts';
import { partInput } from '../../rules/inputs/input.ts';
import { part } from '../../rules/inputs/part.ts';
import type { Case } from '../../rules/judging/case.ts';
import { known } from '../../rules/judging/value.ts';
import { step } from '../formula/formula-source.ts';
import { cuttingForce, type WhichCut } from './cut.ts';
import { called, given, lines, overAll, type Piece } from './piece.ts';
import { TILT } from './tilt-asked.ts';
import { STACK, sweptRadius, workOutline } from './work.ts';

const GRAVITY = '9.80665';

/** The farthest point of part and fixture from the tilt axis: gives d_t. */
export function tiltedRadius(of: Case): readonly Piece[] {
  const { pieces, corners } = workOutline(of);
  const away = corners.map(({ v, w }) => `sqrt(${v.includes('/') ? `(${v})` : v}^2 + ${w}^2)`);
  return [
    ...pieces,
    lines(step('d_t', 'mm', 'farthest corner of part and fixture from the tilt axis', overAll('max', away))),
  ];
}

const MASSES = given({
  m: called('mass of the part', part.mass),
  m_f: called('mass of the fixture', part.fixtureMass),
});

/** Gravity about the tilt axis at its worst: gives M_g. */
export function gravityMoment(of: Case): readonly Piece[] {
  const { gravity } = of.rotary;
  if (gravity === 'along') return [lines(step('M_g', 'N·m', 'gravity about an upright tilt axis', '0'))];
  const [up, out] = gravity === 'across' ? ['E', 'abs(A)'] : ['abs(A)', 'E'];
  return [
    sweptRadius(of),
    STACK,
    MASSES,
    TILT,
    lines(
      step(
        'A',
        'kg·mm',
        'mass × height of its center above the tilt axis, part and fixture',
        'm*(B + h/2) + m_f*(p + f/2)',
      ),
      step('E', 'kg·mm', 'mass × distance of its center from the rotary axis', 'm*e'),
      step('w_t', '°', 'tilt at which the weight pulls most', `min(atan2(${up}, ${out}), tilt)`),
      step(
        'M_g',
        'N·m',
        'moment of gravity at that tilt',
        `${GRAVITY}*(${up}*sin(w_t) + ${out}*cos(w_t))/1000`,
      ),
    ),
  ];
}

/** How much of the weight turns the rotary axis: nothing while it is upright, all of it once it is level. */
function levelShare({ rotary }: Case): string {
  if (rotary.gravity !== 'tool') return rotary.axes === 2 ? '1' : '0';
  return rotary.axes === 1 ? '1' : 'sin(min(tilt, 90))';
}

const none = known(0, 'no drill');
const DRILL = given({
  Fd: partInput('thrust of the drill', 'N', [0, 10000], (of) => of.drillThrust ?? none),
  o_d: partInput('distance of the hole from the axis', 'mm', [0, 500], (of) => of.drillOffset ?? none),
});
const SAFETY = given({ k: called('safety factor on the cut', part.brakeSafety) });

/** Torque about the rotary axis: gives M. */
export function aboutRotaryAxis(of: Case, family: Part | null, which: WhichCut): readonly Piece[] {
  const drilled = which === 'cut' && of.part?.drillThrust != null;
  const level = of.rotary.axes === 1 ? '' : '*sin(min(tilt, 90))';
  return [
    sweptRadius(of),
    ...cuttingForce(family, which),
    SAFETY,
    given({ m: called('mass of the part', part.mass) }),
    TILT,
    ...(drilled ? [DRILL] : []),
    lines(
      step('M_w', 'N·m', 'weight of the part off the axis', `m*${GRAVITY}*e*${levelShare(of)}/1000`),
      step('M_c', 'N·m', 'milling', 'k*Ft*R/1000'),
      ...(drilled ? [step('M_d', 'N·m', 'drilling', `k*Fd*o_d${level}/1000`)] : []),
      step('M', 'N·m', 'torque about the rotary axis', drilled ? 'max(M_c, M_d) + M_w' : 'M_c + M_w'),
    ),
  ];
}

/** Torque about the tilt axis: gives M. */
export function aboutTiltAxis(of: Case, family: Part | null, which: WhichCut): readonly Piece[] {
  const drilled = which === 'cut' && of.part?.drillThrust != null;
  return [
    ...tiltedRadius(of),
    ...gravityMoment(of),
    ...cuttingForce(family, which),
    SAFETY,
    ...(drilled ? [DRILL] : []),
    lines(
      step('M_c', 'N·m', 'milling at the farthest corner', 'k*Ft*d_t/1000'),
      ...(drilled ? [step('M_d', 'N·m', 'drilling', 'k*Fd*o_d/1000')] : []),
      step('M', 'N·m', 'torque about the tilt axis', drilled ? 'max(M_c, M_d) + M_g' : 'M_c + M_g'),
    ),
  ];
}
