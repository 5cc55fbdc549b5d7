import { machine } from '../../inputs/machine.ts';
import { assume } from '../../inputs/setting.ts';
import { site } from '../../inputs/site.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { standsAlready } from '../../sides/owned.ts';
import { theInput } from '../../sides/single.ts';

export const doorway = defineCheck({
  id: 'doorway',
  stage: 'shop',
  about: 'arrangement',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => !standsAlready(of),
  comparisons: [
    {
      what: 'width of the doorway',
      // it goes in with its narrower side ahead
      need: least(['machine'], () => [
        term(
          'length as shipped',
          { long: rises(machine.shipsLong), side: rises(assume.doorSide) },
          (of) => of.long + of.side,
        ),
        term(
          'width as shipped',
          { wide: rises(machine.shipsWide), side: rises(assume.doorSide) },
          (of) => of.wide + of.side,
        ),
      ]),
      have: theInput([], site.doorWidth),
    },
    {
      what: 'height of the doorway',
      need: greatest(['machine'], () => [
        term(
          'height as shipped, on skates',
          { high: rises(machine.shipsHigh), skates: rises(assume.doorSkates) },
          (of) => of.high + of.skates,
        ),
      ]),
      have: theInput([], site.doorHeight),
    },
  ],
  formula:
    'least side as shipped + 100 ≤ width; height as shipped + 120 (skates) ≤ height; a machine is never laid down',
  source: 'assumption',
  remedies: ['larger-opening', 'smaller-machine'],
  examples: [
    {
      what: '2300 × 2000 × 2500 mm through 2100 × 2700 mm',
      given: { shop: { doorway: { width: 2100, height: 2700 } } },
      verdict: 'holds',
      need: 2100,
      have: 2100,
    },
    {
      what: 'the same through a doorway 2000 mm wide',
      given: { shop: { doorway: { width: 2000, height: 3500 } } },
      verdict: 'fails',
      need: 2100,
      have: 2000,
    },
    {
      what: 'through one of 2600 mm high: it does not go in on skates, and is not laid down',
      given: { shop: { doorway: { width: 6000, height: 2600 } } },
      verdict: 'fails',
      need: 2620,
      have: 2600,
    },
    {
      what: 'a doorway of which nobody knows the width',
      given: { shop: { doorway: { width: 'unknown', height: 3000 } } },
      verdict: 'open',
    },
  ],
});
