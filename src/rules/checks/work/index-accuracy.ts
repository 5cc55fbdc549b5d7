import { arcSecondsToLength } from '../../../mechanics/contouring/arc-length.ts';
import { centerError } from '../../../mechanics/contouring/center-error.ts';
import { errorBudget } from '../../../mechanics/contouring/error-budget.ts';
import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { assume } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least, type Side } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { isStandard, orderFeature } from '../../sides/feature.ts';
import { radiusRises, sweptRadius } from '../../sides/stack.ts';
import { tiltedRadiusInput } from '../../sides/tilted-radius.ts';

/** Between faces that are indexed by half a turn, the error of the center counts twice. */
const HALF_TURN = 180;

const probed = (of: Case): boolean => isStandard(of, 'spindleProbe');

/** Angular errors at their radii, errors of both rotation centers, and the machine's own positioning. */
const between =
  (center: typeof assume.centerErrorHand, found: string): Side['terms'] =>
  (of) => {
    const shared = {
      ...radiusRises,
      rot: rises(rotary.accuracyRotary),
      center: rises(center),
      position: rises(machine.positioning),
    };
    if (of.rotary.axes === 1)
      return [
        term(`indexed about one axis, centers ${found}`, shared, (values) =>
          errorBudget([
            arcSecondsToLength(sweptRadius(values), values.rot),
            centerError(values.center, HALF_TURN),
            values.position,
          ]),
        ),
      ];
    const tilting = {
      ...shared,
      far: rises(tiltedRadiusInput),
      tilting: rises(rotary.accuracyTilt),
      tilt: rises(part.tilt),
    };
    return [
      term(`indexed about both axes, centers ${found}`, tilting, (values) =>
        errorBudget([
          arcSecondsToLength(sweptRadius(values), values.rot),
          arcSecondsToLength(values.far, values.tilting),
          centerError(values.center, HALF_TURN),
          centerError(values.center, values.tilt),
          values.position,
        ]),
      ),
    ];
  };

const ROOMS = ['part', 'rotary', 'machine'] as const;
const byHand = greatest(ROOMS, between(assume.centerErrorHand, 'found by hand'));
const byProbe = greatest(ROOMS, between(assume.centerErrorProbed, 'probed'));

const allowed = least(['part'], () => [
  term(
    'share of the tolerance',
    { tolerance: rises(part.tolerance), share: rises(assume.toleranceShare) },
    (of) => of.tolerance * of.share,
  ),
]);

export const indexAccuracy = defineCheck({
  id: 'index-accuracy',
  stage: 'rotary-class',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'error between faces, centers found by hand',
      when: (of) => !probed(of),
      need: byHand,
      have: allowed,
      easings: [
        {
          ...orderFeature('spindle-probe', 'spindleProbe', [{ need: byProbe, have: allowed }]),
          amount: byProbe,
        },
      ],
    },
    {
      what: 'error between faces, centers probed',
      when: probed,
      need: byProbe,
      have: allowed,
    },
  ],
  formula:
    '√((R·δ rotary)² + (R tilt·δ tilt)² + (2·e·sin 90°)² + (2·e·sin(tilt/2))² + positioning²) ≤ share × tolerance',
  source: 'geometry of small angles; root sum of squares; center errors and share are assumptions',
  remedies: ['spindle-probe', 'larger-rotary', 'lower-fixture', 'centered-part'],
  examples: [
    {
      what: 'only the centers count: 0.04 and 0.0283 mm by hand',
      given: {
        part: { tolerance: 0.1 },
        rotary: { accuracy: { rotary: 0, tilt: 0 } },
        machine: { positioning: 0, features: { spindleProbe: undefined } },
      },
      verdict: 'holds',
      need: 0.0489898,
      have: 0.05,
    },
    {
      what: 'half the tolerance, and a probe is offered',
      given: {
        part: { tolerance: 0.05 },
        rotary: { accuracy: { rotary: 0, tilt: 0 } },
        machine: { positioning: 0, features: { spindleProbe: 6800 } },
      },
      verdict: 'holds if',
      need: 0.0489898,
      have: 0.025,
    },
    {
      what: 'half the tolerance, and no probe to be had',
      given: {
        part: { tolerance: 0.05 },
        rotary: { accuracy: { rotary: 0, tilt: 0 } },
        machine: { positioning: 0, features: { spindleProbe: undefined } },
      },
      verdict: 'fails',
      need: 0.0489898,
      have: 0.025,
    },
    {
      what: 'a tolerance that is not known',
      given: { part: { tolerance: 'unknown' } },
      verdict: 'open',
    },
  ],
});
