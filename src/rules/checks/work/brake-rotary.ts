import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { aboutRotaryAxis, drillAboutRotaryAxis } from '../../sides/cutting-torque.ts';
import { theInput } from '../../sides/single.ts';

import { CUT_OF_1000_N, PLASTIC } from '../example-cuts.ts';

export const brakeRotary = defineCheck({
  id: 'brake-rotary',
  stage: 'rotary-class',
  about: 'part',
  unit: 'N·m',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'torque about the rotary axis',
      need: greatest(['part', 'rotary'], (of) => [
        ...aboutRotaryAxis(of, part.cutForce, part.brakeSafety),
        ...drillAboutRotaryAxis(of),
      ]),
      have: theInput(['rotary'], rotary.brakeRotary),
    },
  ],
  formula:
    'k·F·(r + e) + m·g·e·sin min(tilt, 90°) ≤ brake torque (a level rotary axis: all of m·g·e, an upright one: none), or k·drill thrust·offset instead where that is more',
  source: 'statics; peak tangential force after Kienzle; k is an assumption',
  remedies: ['lighter-cut', 'larger-rotary', 'centered-part'],
  examples: [
    {
      what: 'a described cut of 1000 N at 50 mm, held twice over',
      given: {
        part: { ...PLASTIC, size: [60, 80, 40], cut: CUT_OF_1000_N },
        rotary: { brakeTorque: { rotary: 100.1 } },
      },
      verdict: 'holds',
      need: 100,
      have: 100.1,
    },
    {
      what: 'the same cut interrupted: two and a half times',
      given: {
        part: {
          ...PLASTIC,
          size: [60, 80, 40],
          cut: { ...CUT_OF_1000_N, interrupted: true },
        },
        rotary: { brakeTorque: { rotary: 100.1 } },
      },
      verdict: 'fails',
      need: 125,
      have: 100.1,
    },
    {
      what: '10 kg of part 50 mm off a level axis pull with 4.903 N·m besides',
      given: {
        part: {
          ...PLASTIC,
          size: [60, 80, 40],
          approaches: ['around'],
          mass: 10,
          eccentricity: 50,
          cut: CUT_OF_1000_N,
        },
        rotary: { class: 'single-axis', brakeTorque: { rotary: 204 } },
      },
      verdict: 'fails',
      need: 204.903325,
      have: 204,
    },
    {
      what: 'the same axis upright, on its back under a level tool: nothing pulls',
      given: {
        part: {
          ...PLASTIC,
          size: [60, 80, 40],
          approaches: ['around'],
          mass: 10,
          eccentricity: 50,
          cut: CUT_OF_1000_N,
        },
        rotary: { class: 'single-axis', brakeTorque: { rotary: 204 } },
        machine: { spindle: 'horizontal' },
      },
      verdict: 'holds',
      need: 200,
      have: 204,
    },
    {
      what: 'a table that tilts under a level tool: its rotary axis is level from the first',
      given: {
        part: {
          ...PLASTIC,
          size: [60, 80, 40],
          approaches: ['top'],
          mass: 10,
          eccentricity: 50,
          cut: CUT_OF_1000_N,
        },
        machine: { spindle: 'horizontal', builtIn: { brakeTorque: { rotary: 204 } } },
      },
      verdict: 'fails',
      need: 204.903325,
      have: 204,
    },
    {
      what: 'a cut that is not known',
      given: {
        part: { size: [60, 80, 40], cut: 'unknown' },
        rotary: { brakeTorque: { rotary: 100 } },
      },
      verdict: 'open',
    },
  ],
});
