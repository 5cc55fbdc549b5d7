import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { aboutTiltAxis, drillAboutTiltAxis } from '../../sides/cutting-torque.ts';
import { theInput } from '../../sides/single.ts';
import { CUT_OF_1000_N, PLASTIC } from '../example-cuts.ts';

const STACK_50 = {
  size: [36, 48, 20],
  holding: { diameter: 50, height: 10, mass: 0 },
  mass: 0.0001,
} as const;

export const brakeTilt = defineCheck({
  id: 'brake-tilt',
  stage: 'rotary-class',
  about: 'part',
  unit: 'N·m',
  sense: 'at-most',
  applies: (of) => of.rotary.axes === 2,
  comparisons: [
    {
      what: 'torque about the tilt axis',
      need: greatest(['part', 'rotary'], (of) => [
        ...aboutTiltAxis(part.cutForce, part.brakeSafety),
        ...drillAboutTiltAxis(of),
      ]),
      have: theInput(['rotary'], rotary.brakeTilt),
    },
  ],
  formula:
    'k·F·(distance from the tilt axis) + gravity moment ≤ brake torque, or k·drill thrust·offset instead where that is more',
  source: 'statics; peak tangential force after Kienzle; k is an assumption',
  remedies: ['lighter-cut', 'larger-rotary', 'lower-fixture', 'other-class'],
  examples: [
    {
      what: '1000 N at 50 mm from the tilt axis, held twice over',
      given: {
        part: { ...PLASTIC, ...STACK_50, cut: CUT_OF_1000_N },
        rotary: { faceOffset: 10, brakeTorque: { tilt: 101 } },
      },
      verdict: 'holds',
      need: 100.00003,
      have: 101,
    },
    {
      what: 'a weaker brake',
      given: {
        part: { ...PLASTIC, ...STACK_50, cut: CUT_OF_1000_N },
        rotary: { faceOffset: 10, brakeTorque: { tilt: 99 } },
      },
      verdict: 'fails',
      need: 100.00003,
      have: 99,
    },
    {
      what: 'a material that is not known',
      given: {
        part: { ...STACK_50, material: 'unknown' },
        rotary: { brakeTorque: { tilt: 200 } },
      },
      verdict: 'open',
    },
  ],
});
