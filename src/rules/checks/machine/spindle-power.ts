import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { assume } from '../../inputs/setting.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { falls, rises, term } from '../../judging/term.ts';
import { theInput } from '../../sides/single.ts';
import { CUT_OF_1000_N, PLASTIC } from '../example-cuts.ts';

const motorPower = greatest(['part'], () => [
  term(
    'the heaviest cut',
    { power: rises(part.cutPower), share: falls(assume.spindleEfficiency) },
    (of) => of.power / of.share,
  ),
]);

export const spindlePower = defineCheck({
  id: 'spindle-power',
  stage: 'fit',
  about: 'part',
  unit: 'kW',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'spindle power',
      need: motorPower,
      have: theInput(['machine'], machine.power),
    },
  ],
  formula: 'ap·ae·vf·kc/(60·10⁶) / efficiency ≤ rated power',
  source: 'specific cutting force after Kienzle, at the mean chip thickness; efficiency is an assumption',
  remedies: ['lighter-cut', 'stronger-spindle'],
  examples: [
    {
      what: '13.3 × 10 × 318.3 mm/min × 750 N/mm², eight tenths of it at the tool',
      given: {
        part: { ...PLASTIC, cut: CUT_OF_1000_N },
        machine: { spindleDrive: { power: 0.7 } },
      },
      verdict: 'holds',
      need: 0.6631456,
      have: 0.7,
    },
    {
      what: 'a weaker spindle',
      given: {
        part: { ...PLASTIC, cut: CUT_OF_1000_N },
        machine: { spindleDrive: { power: 0.6 } },
      },
      verdict: 'fails',
      need: 0.6631456,
      have: 0.6,
    },
    {
      what: 'a cut that is not known',
      given: {
        part: { cut: 'unknown', material: 'steel-carbon' },
        machine: { spindleDrive: { power: 2 } },
      },
      verdict: 'open',
    },
  ],
});
