import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { setting } from '../../inputs/setting.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { theInput } from '../../sides/single.ts';

const onTheTable = greatest(['part', 'rotary', 'plates'], () => [
  term(
    'rotary, plates, fixture and part',
    {
      rotary: rises(rotary.mass),
      plates: rises(setting.plateMass),
      fixture: rises(part.fixtureMass),
      m: rises(part.mass),
    },
    (of) => of.rotary + of.plates + of.fixture + of.m,
  ),
]);

export const tableLoad = defineCheck({
  id: 'table-load',
  stage: 'fit',
  about: 'part',
  unit: 'kg',
  sense: 'at-most',
  applies: (of) => !of.machine.builtIn,
  comparisons: [
    {
      what: 'mass on the machine table',
      need: onTheTable,
      have: theInput(['machine'], machine.tableLoad),
    },
  ],
  formula: 'rotary + plates + fixture + part ≤ table load',
  source: 'common practice, no source',
  remedies: ['larger-machine', 'lighter-fixture'],
  examples: [
    {
      what: '95 + 4 + 16 kg on 115 kg',
      given: {
        part: { mass: 16, holding: { mass: 4 } },
        rotary: { mass: 95 },
        machine: { table: { load: 115 } },
      },
      verdict: 'holds',
      need: 115,
      have: 115,
    },
    {
      what: 'the same on 100 kg',
      given: {
        part: { mass: 16, holding: { mass: 4 } },
        rotary: { mass: 95 },
        machine: { table: { load: 100 } },
      },
      verdict: 'fails',
      need: 115,
      have: 100,
    },
    {
      what: 'a part whose mass is not known',
      given: {
        part: { mass: [5, 50], holding: { mass: 4 } },
        rotary: { mass: 95 },
        machine: { table: { load: 120 } },
      },
      verdict: 'open',
    },
  ],
});
