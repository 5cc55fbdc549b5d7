import type { Feature } from '../../catalog/catalog.ts';
import { caseInput, fixed } from '../../rules/inputs/input.ts';
import { machine } from '../../rules/inputs/machine.ts';
import { part } from '../../rules/inputs/part.ts';
import { shop } from '../../rules/inputs/setting.ts';
import { known } from '../../rules/judging/value.ts';
import { isStandard } from '../../rules/sides/feature.ts';
import { step } from '../formula/formula-source.ts';
import { called, given, lines, source } from '../pieces/piece.ts';
import type { CheckFormula } from './check-formula.ts';

/** One where the control comes with a feature, else zero. */
const comesWith = (feature: Feature) =>
  caseInput('it comes with the control: one for yes, zero for no', '', [0, 1], (of) =>
    known(isStandard(of, feature) ? 1 : 0, `machines[${of.machine.key}].features.${feature}`),
  );

const axisDrives: CheckFormula = ({ of }) =>
  source(
    [
      given({
        X: fixed('rotary axes', of.rotary.axes),
        n_f: machine.drivesFitted,
        n_o: machine.drivesOffered,
      }),
      lines(step('n_d', '', 'drives that there are or can be had', 'n_f + n_o')),
    ],
    'X',
    'n_d',
  );

const toolCenterPoint: CheckFormula = () =>
  source(
    [given({ y: comesWith('toolCenterPoint') }), lines(step('x', '', 'the axes move in the cut', '1'))],
    'x',
    'y',
  );

const offCenter =
  (feature: Feature): CheckFormula =>
  () =>
    source(
      [
        given({
          e: called('how far the part stands off the rotary axis', part.eccentricity),
          hand: called('loaded by hand: one for yes, zero for no', shop.byHand),
          y: comesWith(feature),
        }),
        lines(step('x', '', 'loaded by hand off the axis', 'if(e > 0, if(hand > 0, 1, 0), 0)')),
      ],
      'x',
      'y',
    );

/** Steps of five-axis paths are no longer than this; the check has the same number. */
const LONGEST_STEP = '0.2';

const lookAhead: CheckFormula = ({ of, comparison }) => {
  const chord = 'sqrt(8*r_c*ce)';
  const path = [
    given({ v: part.contourFeed, r_c: part.contourRadius, ce: part.chordError }),
    lines(
      step(
        's',
        'mm',
        'length of one block of the path',
        of.part?.motion === 'simultaneous' ? `min(${chord}, ${LONGEST_STEP})` : chord,
      ),
    ),
  ];
  return comparison.what === 'blocks a second'
    ? source(
        [
          ...path,
          given({ N_c: machine.blocks }),
          lines(step('N', 'blocks/s', 'blocks of the path', 'v/60/s')),
        ],
        'N',
        'N_c',
      )
    : source(
        [
          ...path,
          given({ acc: machine.acceleration, A_c: machine.blocksAhead }),
          lines(
            step('d', 'mm', 'way in which the axes stop', '(v/60)^2/(2*acc*1000)'),
            step('N', 'blocks', 'blocks within that way', 'd/s'),
          ),
        ],
        'N',
        'A_c',
      );
};

export const CONTROL_FORMULAS = {
  'axis-drives': axisDrives,
  'tool-center-point': toolCenterPoint,
  'rotating-work-offset': offCenter('rotatingWorkOffset'),
  'tilted-work-plane': offCenter('tiltedWorkPlane'),
  'look-ahead': lookAhead,
} as const;
