import { assume, tools } from '../../inputs/setting.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { extended, rises } from '../../judging/term.ts';
import { endOf } from '../../sides/boxes/index.ts';
import { noseAtTop } from '../../sides/nose.ts';

const toolAbove = { c: rises(assume.approach), L: rises(tools.longest) };

const highest = greatest(['part', 'rotary'], (of) =>
  endOf('wHigh')(of).map((tip) => extended(tip, toolAbove, (height, values) => height + values.c + values.L)),
);

export const reachHigh = defineCheck({
  id: 'reach-high',
  stage: 'clearance',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [{ what: 'nose above the highest tip', need: highest, have: noseAtTop }],
  marginOverTravel: true,
  formula: 'greatest tip + approach + longest tool ≤ nose at the top of Z above the tilt axis',
  source: 'geometry of the stack-up; common practice, no source',
  remedies: ['lowered-table', 'column-spacer', 'shorter-tools', 'lower-fixture', 'larger-machine'],
  examples: [
    {
      what: 'top at 10 + 40 + 60 mm, 25 mm clearance, a 180 mm tool: 315 mm, and the nose at 610 − 150 mm',
      given: {
        part: { size: [90, 60, 60], holding: { height: 40 } },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [100, 610] },
        tools: { longest: 180 },
      },
      verdict: 'holds',
      need: 315,
      have: 460,
    },
    {
      what: 'a low nose',
      given: {
        part: { size: [90, 60, 60], holding: { height: 40 } },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [100, 440] },
        tools: { longest: 180 },
      },
      verdict: 'fails',
      need: 315,
      have: 290,
    },
    {
      what: 'the same with a table lowered by 75 mm',
      given: {
        part: { size: [90, 60, 60], holding: { height: 40 } },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [100, 440] },
        tools: { longest: 180 },
        raised: 75,
      },
      verdict: 'holds',
      need: 315,
      have: 365,
    },
    {
      what: 'an upright axis over the middle of the table, work out to 54.1 mm from it: + 25 + 180 mm',
      given: {
        part: { size: [90, 60, 60], approaches: ['around'] },
        rotary: { class: 'single-axis', centerHeight: 150 },
        machine: { spindle: 'horizontal', noseToTable: [100, 260] },
        tools: { longest: 180 },
      },
      verdict: 'holds',
      need: 259.0833,
      have: 260,
    },
    {
      what: 'a longest tool that is not known',
      given: {
        part: { size: [90, 60, 60], holding: { height: 40 } },
        rotary: { faceOffset: 10, centerHeight: 150 },
        machine: { noseToTable: [100, 440] },
        tools: { longest: [120, 200] },
      },
      verdict: 'open',
    },
  ],
});
