import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { aboutRotaryAxis } from '../../sides/cutting-torque.ts';
import { theInput } from '../../sides/single.ts';
import { CUT_OF_1000_N, PLASTIC } from '../example-cuts.ts';

export const driveRotary = defineCheck({
  id: 'drive-rotary',
  stage: 'rotary-class',
  about: 'part',
  unit: 'N·m',
  sense: 'at-most',
  applies: (of) => of.part?.motion === 'simultaneous',
  comparisons: [
    {
      what: 'torque about the moving rotary axis',
      need: greatest(['part', 'rotary'], (of) => aboutRotaryAxis(of, part.contourForce, part.brakeSafety)),
      have: theInput(['rotary'], rotary.driveRotary),
    },
  ],
  formula: 'k·F·(r + e) + m·g·e·sin min(tilt, 90°) ≤ drive torque, F of the contour cut',
  source: 'statics; peak tangential force after Kienzle; k is an assumption',
  remedies: ['lighter-cut', 'larger-rotary', 'centered-part'],
  examples: [
    {
      what: 'a contour cut of 1000 N at 50 mm',
      given: {
        part: {
          ...PLASTIC,
          size: [60, 80, 40],
          motion: 'simultaneous',
          contourCut: CUT_OF_1000_N,
        },
        rotary: { driveTorque: { rotary: 100.1 } },
      },
      verdict: 'holds',
      need: 100,
      have: 100.1,
    },
    {
      what: 'a weaker drive',
      given: {
        part: {
          ...PLASTIC,
          size: [60, 80, 40],
          motion: 'simultaneous',
          contourCut: CUT_OF_1000_N,
        },
        rotary: { driveTorque: { rotary: 60 } },
      },
      verdict: 'fails',
      need: 100,
      have: 60,
    },
    {
      what: 'a drive torque that the catalog leaves out',
      given: {
        part: { motion: 'simultaneous', contourCut: 'light' },
        rotary: { driveTorque: { rotary: 'unknown' } },
      },
      verdict: 'open',
    },
  ],
});
