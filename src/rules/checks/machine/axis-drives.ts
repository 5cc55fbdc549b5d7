import { fixed } from '../../inputs/input.ts';
import { machine } from '../../inputs/machine.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';

const drivesNeeded = greatest(['rotary'], (of) => [
  term('rotary axes', { axes: rises(fixed('rotary axes', of.rotary.axes)) }, (values) => values.axes),
]);

const drivesThere = least(['machine'], () => [
  term(
    'drives fitted and offered',
    {
      fitted: rises(machine.drivesFitted),
      offered: rises(machine.drivesOffered),
    },
    (of) => of.fitted + of.offered,
  ),
]);

export const axisDrives = defineCheck({
  id: 'axis-drives',
  stage: 'features',
  about: 'arrangement',
  unit: '',
  sense: 'at-most',
  // a built-in table comes with its drives
  applies: (of) => !of.machine.builtIn,
  comparisons: [{ what: 'axis drives', need: drivesNeeded, have: drivesThere }],
  categorical: true,
  formula: 'one axis drive for each rotary axis ≤ fitted + offered',
  source: 'common practice, no source',
  remedies: ['other-control', 'other-class', 'larger-machine'],
  examples: [
    {
      what: 'two axes, two drives offered',
      given: { machine: { axisDrives: { fitted: 0, offered: 2 } } },
      verdict: 'holds',
      need: 2,
      have: 2,
    },
    {
      what: 'two axes, one drive offered',
      given: { machine: { axisDrives: { fitted: 0, offered: 1 } } },
      verdict: 'fails',
      need: 2,
      have: 1,
    },
    {
      what: 'drives that the catalog leaves out',
      given: { machine: { axisDrives: { fitted: 0, offered: 'unknown' } } },
      verdict: 'open',
    },
  ],
});
