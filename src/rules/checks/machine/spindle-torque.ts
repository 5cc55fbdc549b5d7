import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { defineCheck } from '../../judging/check.ts';
import { least } from '../../judging/side.ts';
import { falls, rises, term } from '../../judging/term.ts';
import { needsInput } from '../../sides/single.ts';
import { CUT_OF_1000_N, PLASTIC } from '../example-cuts.ts';

/** N·m at 1 kW and 1 rev/min. */
const TORQUE_OF_A_KILOWATT = 9549;

const torqueAtSpeed = least(['part', 'machine'], () => [
  term('rated torque', { torque: rises(machine.torque) }, (of) => of.torque),
  term(
    'torque that the power leaves at this speed',
    { power: rises(machine.power), n: falls(part.cutSpeed) },
    (of) => (TORQUE_OF_A_KILOWATT * of.power) / of.n,
  ),
]);

export const spindleTorque = defineCheck({
  id: 'spindle-torque',
  stage: 'fit',
  about: 'part',
  unit: 'N·m',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'spindle torque',
      need: needsInput(['part'], part.cutTorque),
      have: torqueAtSpeed,
    },
  ],
  formula: 'P·30000/(π·n) ≤ the smaller of rated torque and 9549·power/n',
  source: 'specific cutting force after Kienzle; power = torque × speed',
  remedies: ['lighter-cut', 'stronger-spindle'],
  examples: [
    {
      what: '0.53 kW at 1591.5 rev/min is 3.18 N·m',
      given: {
        part: { ...PLASTIC, cut: CUT_OF_1000_N },
        machine: { spindleDrive: { power: 15, torque: 4 } },
      },
      verdict: 'holds',
      need: 3.183099,
      have: 4,
    },
    {
      what: 'a strong spindle with little power left at this speed',
      given: {
        part: { ...PLASTIC, cut: CUT_OF_1000_N },
        machine: { spindleDrive: { power: 0.5, torque: 80 } },
      },
      verdict: 'fails',
      need: 3.183099,
      have: 2.999907,
    },
    {
      what: 'a torque that the catalog leaves out',
      given: {
        part: { ...PLASTIC, cut: CUT_OF_1000_N },
        machine: { spindleDrive: { torque: 'unknown' } },
      },
      verdict: 'open',
    },
  ],
});
