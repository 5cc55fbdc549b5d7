import { machine } from '../../inputs/machine.ts';
import { assume, setting } from '../../inputs/setting.ts';
import { site } from '../../inputs/site.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { standsAlready } from '../../sides/owned.ts';
import { theInput } from '../../sides/single.ts';

export const ceiling = defineCheck({
  id: 'ceiling',
  stage: 'shop',
  about: 'arrangement',
  unit: 'mm',
  sense: 'at-most',
  // a mill that is owned stands under its ceiling, but a spacer makes it higher
  applies: (of) => !standsAlready(of) || of.heightened.high > 0,
  comparisons: [
    {
      what: 'height under the ceiling',
      need: greatest(['machine', 'additions'], () => [
        term(
          'machine with spacer and room above',
          {
            height: rises(machine.standsHigh),
            spacer: rises(setting.heightened),
            room: rises(assume.ceilingRoom),
          },
          (of) => of.height + of.spacer + of.room,
        ),
      ]),
      have: theInput([], site.ceiling),
    },
  ],
  formula: 'height + spacer + 300 ≤ ceiling',
  source: 'assumption',
  remedies: ['lowered-table', 'smaller-machine', 'other-bay'],
  examples: [
    {
      what: '2700 mm high under 3000 mm',
      given: { shop: { ceiling: 3000 } },
      verdict: 'holds',
      need: 3000,
      have: 3000,
    },
    {
      what: 'the same with a spacer of 200 mm',
      given: { shop: { ceiling: 3000 }, heightened: 200 },
      verdict: 'fails',
      need: 3200,
      have: 3000,
    },
    {
      what: 'a mill that stands there, made higher by a spacer of 200 mm',
      given: { shop: { machine: 'example-mill', ceiling: 3000 }, heightened: 200 },
      verdict: 'fails',
      need: 3200,
      have: 3000,
    },
    { what: 'a ceiling that nobody measured', given: { shop: { ceiling: 'unknown' } }, verdict: 'open' },
  ],
});
