import { machine } from '../../inputs/machine.ts';
import { assume, tools } from '../../inputs/setting.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, type Side } from '../../judging/side.ts';
import { extended, rises, term } from '../../judging/term.ts';
import { noseAtTop } from '../../sides/nose.ts';
import { sweptHeights, turningRadii } from '../../sides/profile.ts';
import { wholeRadiusInput } from '../../sides/tilted-radius.ts';
import { travelBesideTerm } from '../../sides/travel.ts';

const toolAbove = { c: rises(assume.approach), L: rises(tools.longest) };

/** The work turns under the longest tool. */
const highestSwept = greatest(['part', 'rotary'], (of) =>
  (of.rotary.axes === 1 ? turningRadii(of) : sweptHeights(of)).map((point) =>
    extended(point, toolAbove, (height, values) => height + values.c + values.L),
  ),
);

const asideNeeded = greatest(['part', 'rotary', 'machine'], () => [
  term(
    'swept radius, half the nose and clearance',
    {
      swept: rises(wholeRadiusInput),
      nose: rises(machine.noseDiameter),
      c: rises(assume.approach),
    },
    (of) => of.swept + of.nose / 2 + of.c,
  ),
]);

/** The farthest that the spindle can move from the rotary center, to whichever side. */
const asideOffered: Side = greatest(['machine', 'place', 'mounting'], (of) =>
  (['x', 'y'] as const).flatMap((axis) =>
    (['low', 'high'] as const).map((end) => travelBesideTerm(of, axis, end)),
  ),
);

const STACK = {
  size: [90, 60, 60],
  holding: { diameter: 100, height: 40 },
} as const;
const LOW_NOSE = { noseToTable: [100, 450], noseDiameter: 90 } as const;

export const indexClear = defineCheck({
  id: 'index-clear',
  stage: 'clearance',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'work that turns under the longest tool',
      need: highestSwept,
      have: noseAtTop,
      easings: [
        {
          measure: 'move-aside',
          // an axis that moves with the tool in the cut cannot be moved aside first
          when: (of) => of.part?.motion !== 'simultaneous',
          all: [{ need: asideNeeded, have: asideOffered }],
          amount: asideNeeded,
        },
      ],
    },
  ],
  marginOverTravel: true,
  formula:
    'greatest v·sin θ + w·cos θ over the outline and the tilt + approach + longest tool ≤ nose at the top of Z; else the tool moves aside by the swept radius + half the nose + approach',
  source: 'geometry; common practice, no source',
  remedies: ['lowered-table', 'column-spacer', 'shorter-tools', 'larger-machine'],
  examples: [
    {
      what: 'a top edge at 30 and 40 mm swings up to 50 mm: 50 + 25 + 100',
      given: {
        part: { size: [36, 48, 20], holding: { diameter: 50, height: 10 } },
        rotary: { faceplate: 60, faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [100, 330] },
        tools: { longest: 100 },
      },
      verdict: 'holds',
      need: 175,
      have: 180,
    },
    {
      what: 'a low nose, and room to move aside',
      given: {
        part: STACK,
        machine: LOW_NOSE,
        rotary: { centerHeight: 150 },
        tools: { longest: 180 },
      },
      verdict: 'holds if',
    },
    {
      what: 'a low nose, and axes that move in the cut',
      given: {
        part: { ...STACK, motion: 'simultaneous' },
        machine: LOW_NOSE,
        rotary: { centerHeight: 150 },
        tools: { longest: 180 },
      },
      verdict: 'fails',
    },
    {
      what: 'a longest tool that is not known, on a machine too small to move aside',
      given: {
        part: STACK,
        machine: { ...LOW_NOSE, travel: [250, 250, 350] },
        rotary: { centerHeight: 150 },
        tools: { longest: [90, 200] },
      },
      verdict: 'open',
    },
  ],
});
