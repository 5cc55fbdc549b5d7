import { tools } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { combined, extended, type Input, negated, rises, type Term } from '../../judging/term.ts';
import { endOf } from '../../sides/boxes/index.ts';
import { NOSE_ROOMS, noseAtBottom, noseBottomTerms } from '../../sides/nose.ts';

const lowestTips = endOf('wLow');

const withTool =
  (tool: Input) =>
  (of: Case): readonly Term[] =>
    lowestTips(of).map((tip) => extended(tip, { L: rises(tool) }, (height, values) => height + values.L));

const withShortest = least(['part', 'rotary'], withTool(tools.shortest));
const withLongest = least(['part', 'rotary'], withTool(tools.longest));

/** The gauge length that reaches the lowest tip from the lowest nose. */
const toolNeeded = greatest(['part', ...NOSE_ROOMS], (of) =>
  lowestTips(of).flatMap((tip) =>
    noseBottomTerms(of).map((nose) => combined(nose, negated(tip), (a, b) => a + b)),
  ),
);

export const reachLow = defineCheck({
  id: 'reach-low',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  // the nose at the bottom of Z is a floor: the need may not lie below it
  sense: 'at-least',
  applies: () => true,
  comparisons: [
    {
      what: 'lowest that the nose must come',
      need: withShortest,
      have: noseAtBottom,
      easings: [
        {
          measure: 'longer-tool-there',
          all: [{ need: withLongest, have: noseAtBottom }],
          amount: toolNeeded,
        },
      ],
    },
  ],
  marginOverTravel: true,
  formula:
    'least tip + shortest tool ≥ nose at the bottom of Z above the tilt axis; else those features use a longer tool',
  source: 'geometry of the stack-up; common practice, no source',
  remedies: ['riser', 'longer-tools', 'larger-machine'],
  examples: [
    {
      what: 'tips down to 30 − 20 mm, a 90 mm tool, the nose down to 100 − 150 mm',
      given: {
        part: { size: [90, 60, 60], depthSide: 20, depthTop: 0 },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [100, 610] },
        tools: { shortest: 90 },
      },
      verdict: 'holds',
      need: 100,
      have: -50,
    },
    {
      what: 'the nose stops 20 mm too high for the shortest tool, not for the longest',
      given: {
        part: { size: [90, 60, 60], depthSide: 20, depthTop: 0 },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [270, 610] },
        tools: { shortest: 90, longest: 180 },
      },
      verdict: 'holds if',
      need: 100,
      have: 120,
    },
    {
      what: 'the nose stops too high for every tool',
      given: {
        part: { size: [90, 60, 60], depthSide: 20, depthTop: 0 },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [350, 610] },
        tools: { shortest: 90, longest: 180 },
      },
      verdict: 'fails',
      need: 100,
      have: 200,
    },
    {
      what: 'a depth that is not known',
      given: {
        part: { size: [90, 60, 60], depthSide: [0, 140], depthTop: 0 },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [270, 610] },
        tools: { shortest: 90, longest: 180 },
      },
      verdict: 'open',
    },
  ],
});
