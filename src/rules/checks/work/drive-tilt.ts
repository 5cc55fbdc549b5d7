import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { aboutTiltAxis } from '../../sides/cutting-torque.ts';
import { theInput } from '../../sides/single.ts';
import { CUT_OF_1000_N, PLASTIC } from '../example-cuts.ts';

const STACK_50 = {
  size: [36, 48, 20],
  holding: { diameter: 50, height: 10, mass: 0 },
  mass: 0.0001,
} as const;

export const driveTilt = defineCheck({
  id: 'drive-tilt',
  stage: 'rotary-class',
  about: 'part',
  unit: 'N·m',
  sense: 'at-most',
  applies: (of) => of.part?.motion === 'simultaneous' && of.rotary.axes === 2,
  comparisons: [
    {
      what: 'torque about the moving tilt axis',
      need: greatest(['part', 'rotary'], () => aboutTiltAxis(part.contourForce, part.brakeSafety)),
      have: theInput(['rotary'], rotary.driveTilt),
    },
  ],
  formula: 'k·F·(distance from the tilt axis) + gravity moment ≤ drive torque, F of the contour cut',
  source: 'statics; peak tangential force after Kienzle; k is an assumption',
  remedies: ['lighter-cut', 'larger-rotary', 'lower-fixture', 'other-class'],
  examples: [
    {
      what: 'a contour cut of 1000 N at 50 mm from the tilt axis',
      given: {
        part: {
          ...PLASTIC,
          ...STACK_50,
          motion: 'simultaneous',
          contourCut: CUT_OF_1000_N,
        },
        rotary: { faceOffset: 10, driveTorque: { tilt: 101 } },
      },
      verdict: 'holds',
      need: 100.00003,
      have: 101,
    },
    {
      what: 'a weaker drive',
      given: {
        part: {
          ...PLASTIC,
          ...STACK_50,
          motion: 'simultaneous',
          contourCut: CUT_OF_1000_N,
        },
        rotary: { faceOffset: 10, driveTorque: { tilt: 60 } },
      },
      verdict: 'fails',
      need: 100.00003,
      have: 60,
    },
    {
      what: 'a contour cut that is not known',
      given: {
        part: { motion: 'simultaneous', contourCut: 'unknown' },
        rotary: { driveTorque: { tilt: 300 } },
      },
      verdict: 'open',
    },
  ],
});
