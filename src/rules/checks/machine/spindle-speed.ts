import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { defineCheck } from '../../judging/check.ts';
import { needsInput, theInput } from '../../sides/single.ts';
import { CUT_OF_1000_N, PLASTIC } from '../example-cuts.ts';

export const spindleSpeed = defineCheck({
  id: 'spindle-speed',
  stage: 'fit',
  about: 'part',
  unit: 'rev/min',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'spindle speed',
      need: needsInput(['part'], part.cutSpeed),
      have: theInput(['machine'], machine.speed),
    },
  ],
  formula: '1000·vc/(π·D) ≤ greatest spindle speed',
  source: 'geometry',
  remedies: ['stronger-spindle', 'lighter-cut'],
  examples: [
    {
      what: '100 m/min at 20 mm',
      given: {
        part: { ...PLASTIC, cut: CUT_OF_1000_N },
        machine: { spindleDrive: { speed: 10000 } },
      },
      verdict: 'holds',
      need: 1591.549,
      have: 10000,
    },
    {
      what: '100 m/min at 2 mm on a slow spindle',
      given: {
        part: {
          ...PLASTIC,
          cut: { ...CUT_OF_1000_N, diameter: 2, ae: 1, ap: 1 },
        },
        machine: { spindleDrive: { speed: 10000 } },
      },
      verdict: 'fails',
      need: 15915.49,
      have: 10000,
    },
    {
      what: 'a cutting speed that is not known',
      given: {
        part: { ...PLASTIC, cut: { ...CUT_OF_1000_N, vc: [50, 800] } },
        machine: { spindleDrive: { speed: 10000 } },
      },
      verdict: 'open',
    },
  ],
});
