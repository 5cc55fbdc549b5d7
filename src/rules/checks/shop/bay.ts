import { machine } from '../../inputs/machine.ts';
import { site } from '../../inputs/site.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { rises, type Term, term } from '../../judging/term.ts';
import { standsAlready } from '../../sides/owned.ts';

const across = term(
  'width with service space',
  {
    width: rises(machine.footprintX),
    left: rises(machine.serviceLeft),
    right: rises(machine.serviceRight),
  },
  (of) => of.width + of.left + of.right,
);
const deep = term(
  'depth with service space',
  {
    depth: rises(machine.footprintY),
    front: rises(machine.serviceFront),
    rear: rises(machine.serviceRear),
  },
  (of) => of.depth + of.front + of.rear,
);
const needed = (): readonly Term[] => [across, deep];
const there = (): readonly Term[] => [
  term('bay, one way', { bay: rises(site.bayOne) }, (of) => of.bay),
  term('bay, the other way', { bay: rises(site.bayOther) }, (of) => of.bay),
];

export const bay = defineCheck({
  id: 'bay',
  stage: 'shop',
  about: 'arrangement',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => !standsAlready(of),
  comparisons: [
    { what: 'longer side', need: greatest(['machine'], needed), have: greatest([], there) },
    { what: 'shorter side', need: least(['machine'], needed), have: least([], there) },
  ],
  formula:
    'footprint + service space each side, either way round: longer side ≤ longer side of the bay, shorter ≤ shorter',
  source: 'geometry',
  remedies: ['other-bay', 'smaller-machine'],
  examples: [
    {
      what: '3600 × 4000 mm with service space in a bay of 4000 × 3600 mm, turned',
      given: { shop: { bay: [4000, 3600] } },
      verdict: 'holds',
      need: 4000,
      have: 4000,
    },
    {
      what: 'the same in a bay of 3500 mm one way',
      given: { shop: { bay: [6000, 3500] } },
      verdict: 'fails',
      need: 3600,
      have: 3500,
    },
    {
      what: 'a bay that may be too small',
      given: { shop: { bay: [[3000, 5000], 5000] } },
      verdict: 'open',
    },
    {
      what: 'nobody says how large the bay is',
      given: { shop: { bay: ['unknown', 'unknown'] } },
      verdict: 'open',
    },
    {
      what: 'a mill that stands there already',
      given: { shop: { machine: 'example-mill', bay: [1000, 1000] } },
      verdict: 'holds',
    },
  ],
});
