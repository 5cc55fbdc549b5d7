import { machine } from '../../rules/inputs/machine.ts';
import { part } from '../../rules/inputs/part.ts';
import { rotary } from '../../rules/inputs/rotary.ts';
import { assume } from '../../rules/inputs/setting.ts';
import { isStandard } from '../../rules/sides/feature.ts';
import { step } from '../formula/formula-source.ts';
import { called, given, lines, overAll, source } from '../pieces/piece.ts';
import { TILT } from '../pieces/tilt-asked.ts';
import { aboutRotaryAxis, aboutTiltAxis, gravityMoment, tiltedRadius } from '../pieces/torque.ts';
import { sweptRadius } from '../pieces/work.ts';
import type { CheckFormula } from './check-formula.ts';

const tiltRange: CheckFormula = ({ of, comparison }) => {
  if (of.rotary.axes === 2) return source([TILT, given({ T_g: rotary.tiltGreatest })], 'tilt', 'T_g');
  return comparison.what === 'sides around one level axis'
    ? source([TILT, lines(step('T_g', '°', 'sides around one level axis', '90'))], 'tilt', 'T_g')
    : source(
        [
          lines(
            step('X', 'axes', 'axes that it takes', '2'),
            step('X_r', 'axes', 'axes that there are', '1'),
          ),
        ],
        'X',
        'X_r',
      );
};

const tiltSwing: CheckFormula = ({ of }) =>
  source([...tiltedRadius(of), given({ C_r: rotary.tiltClearRadius })], 'd_t', 'C_r');

const tiltMoment: CheckFormula = ({ of }) =>
  source([...gravityMoment(of), given({ M_t: rotary.tiltMoment })], 'M_g', 'M_t');

const brakeRotary: CheckFormula = ({ of, family }) =>
  source([...aboutRotaryAxis(of, family, 'cut'), given({ M_b: rotary.brakeRotary })], 'M', 'M_b');

const brakeTilt: CheckFormula = ({ of, family }) =>
  source([...aboutTiltAxis(of, family, 'cut'), given({ M_b: rotary.brakeTilt })], 'M', 'M_b');

const driveRotary: CheckFormula = ({ of, family }) =>
  source([...aboutRotaryAxis(of, family, 'contourCut'), given({ M_v: rotary.driveRotary })], 'M', 'M_v');

const driveTilt: CheckFormula = ({ of, family }) =>
  source([...aboutTiltAxis(of, family, 'contourCut'), given({ M_v: rotary.driveTilt })], 'M', 'M_v');

const indexAccuracy: CheckFormula = ({ of }) => {
  const probed = isStandard(of, 'spindleProbe');
  const tilting = of.rotary.axes === 2;
  const squares = ['s_r', ...(tilting ? ['s_t'] : []), 'c_r', ...(tilting ? ['c_t'] : []), 'u'];
  return source(
    [
      sweptRadius(of),
      ...(tilting ? tiltedRadius(of) : []),
      TILT,
      given({
        a_r: rotary.accuracyRotary,
        a_t: rotary.accuracyTilt,
        c: probed ? assume.centerErrorProbed : assume.centerErrorHand,
        u: machine.positioning,
        tol: called('tolerance between faces, plus and minus', part.tolerance),
        q: assume.toleranceShare,
      }),
      lines(
        step('s_r', 'mm', 'error of the rotary axis at the edge of the part', 'R*a_r*pi/648000'),
        step('s_t', 'mm', 'error of the tilt axis at the farthest corner', 'd_t*a_t*pi/648000'),
        step('c_r', 'mm', 'error of the known center, after half a turn', '2*c*sin(180/2)'),
        step('c_t', 'mm', 'error of the known tilt axis, after the tilt', '2*c*sin(tilt/2)'),
        step(
          'E_f',
          'mm',
          'error between faces: root of the sum of the squares',
          `sqrt(${squares.map((each) => `${each}^2`).join(' + ')})`,
        ),
        step('E_a', 'mm', 'error allowed: a share of the tolerance', 'q*tol'),
      ),
    ],
    'E_f',
    'E_a',
  );
};

const rotarySpeed: CheckFormula = () =>
  source(
    [
      given({ v: part.contourFeed, r_c: part.contourRadius, n_r: rotary.speedRotary }),
      lines(step('n', 'rev/min', 'turning speed of the contour', 'v/(2*pi*r_c)')),
    ],
    'n',
    'n_r',
  );

const tailstock: CheckFormula = ({ of }) =>
  source(
    [
      given({
        f: called('height of the fixture', part.fixtureHeight),
        h: called('length of the part from the fixture', part.height),
        a: called('thickness of the part one way', part.length),
        b: called('thickness of the part the other way', part.width),
        q: assume.tailstockRatio,
      }),
      lines(
        step('L_o', 'mm', 'overhang from the faceplate', 'f + h'),
        step(
          'L_f',
          'mm',
          'overhang without a tailstock',
          of.part?.shape === 'round' ? 'a*q' : `${overAll('min', ['a', 'b'])}*q`,
        ),
      ),
    ],
    'L_o',
    'L_f',
  );

export const ROTARY_CLASS_FORMULAS = {
  'tilt-range': tiltRange,
  'tilt-swing': tiltSwing,
  'tilt-moment': tiltMoment,
  'brake-rotary': brakeRotary,
  'brake-tilt': brakeTilt,
  'drive-rotary': driveRotary,
  'drive-tilt': driveTilt,
  'index-accuracy': indexAccuracy,
  'rotary-speed': rotarySpeed,
  tailstock,
} as const;
