import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { staysOn } from '../../sides/lifting/capability.ts';
import { hangsOnTheHook, hoistThatCounts, hookNeeds, hookThere } from '../../sides/lifting/hook.ts';
import { EXAMPLE_FORKLIFT, EXAMPLE_HOIST } from '../example-means.ts';

export const hookHeight = defineCheck({
  id: 'hook-height',
  stage: 'shop',
  about: 'arrangement',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => !of.machine.builtIn && hoistThatCounts(of) !== null,
  comparisons: [
    {
      what: 'hook over the rotary',
      meets: hangsOnTheHook,
      need: greatest(['rotary', 'plates', 'machine'], (of) => {
        const hoist = hoistThatCounts(of);
        return hoist === null ? [] : hookNeeds(hoist);
      }),
      have: greatest(['rotary', 'plates'], (of) => {
        const hoist = hoistThatCounts(of);
        return hoist === null ? [] : [hookThere(hoist)];
      }),
      easings: [staysOn],
    },
  ],
  formula: 'greater of table height and door sill + rotary height + plates + sling height ≤ hook height',
  source: 'geometry; the opening of the roof is to be looked at',
  remedies: ['higher-hook', 'vises-beside', 'other-class'],
  examples: [
    {
      what: 'a rotary of 300 mm and a sling of 500 mm over a sill of 1100 mm, hook at 1900 mm',
      given: { shop: { doorSill: 1100, lifting: [{ ...EXAMPLE_HOIST, hookHeight: 1900 }] }, swaps: 144 },
      verdict: 'holds',
      need: 1900,
      have: 1900,
    },
    {
      what: 'a hook at 1850 mm',
      given: { shop: { doorSill: 1100, lifting: [{ ...EXAMPLE_HOIST, hookHeight: 1850 }] }, swaps: 144 },
      verdict: 'fails',
      need: 1900,
      have: 1850,
    },
    {
      what: 'the same where the rotary can stay on',
      given: { shop: { doorSill: 1100, lifting: [{ ...EXAMPLE_HOIST, hookHeight: 1850 }] }, swaps: 0 },
      verdict: 'holds if',
      need: 1900,
      have: 1850,
    },
    {
      what: 'the same where a forklift lifts it',
      given: {
        shop: { doorSill: 1100, lifting: [{ ...EXAMPLE_HOIST, hookHeight: 1850 }, EXAMPLE_FORKLIFT] },
        swaps: 144,
      },
      verdict: 'holds',
    },
    {
      what: 'a hook of which nobody knows the height',
      given: { shop: { lifting: [{ ...EXAMPLE_HOIST, hookHeight: 'unknown' }] }, swaps: 144 },
      verdict: 'open',
    },
  ],
});
