import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { bestCapability, liftedMass, staysOn } from '../../sides/lifting/capability.ts';
import { EXAMPLE_FORKLIFT, EXAMPLE_HANDS, EXAMPLE_HOIST } from '../example-means.ts';

export const lift = defineCheck({
  id: 'lift',
  stage: 'shop',
  about: 'arrangement',
  unit: 'kg',
  sense: 'at-most',
  applies: (of) => !of.machine.builtIn,
  comparisons: [
    {
      what: 'rotary on the best means of lifting',
      need: greatest(['rotary', 'plates'], () => [liftedMass]),
      have: bestCapability,
      // it can stay on where the vises that are wanted find room beside it, or nobody switches
      easings: [staysOn],
    },
  ],
  formula:
    'rotary + plates ≤ the most of: by hand 23·HM·VM·DM·FM·CM kg (two people ⅔ of the sum), forklift Q·LC_r/LC, hoist rating − rigging with legs of 30° or more; else it stays on, with no lifts a year',
  source:
    'NIOSH 94-110 (lifting equation); load center: OSHA eTool, reprinted; slings: ASME B30.9, reprinted; two people: from memory',
  remedies: ['stronger-hoist', 'vises-beside', 'other-class'],
  examples: [
    {
      what: '95 kg on a hoist for 105 kg with 10 kg of rigging',
      given: { shop: { lifting: [{ ...EXAMPLE_HOIST, capacity: 105 }] }, swaps: 144 },
      verdict: 'holds',
      need: 95,
      have: 95,
    },
    {
      what: 'on legs flatter than 30° the hoist lifts nothing',
      given: { shop: { lifting: [{ ...EXAMPLE_HOIST, slingAngle: 25 }] }, swaps: 144 },
      verdict: 'fails',
      need: 95,
      have: 0,
    },
    {
      what: 'two people, 400 mm before the body from 750 to 1000 mm: 13.30 kg each, 17.73 kg together',
      given: { shop: { lifting: [EXAMPLE_HANDS] }, swaps: 144 },
      verdict: 'fails',
      need: 95,
      have: 17.729167,
    },
    {
      what: 'a rotary of 17 kg goes by hand',
      given: { rotary: { mass: 17 }, shop: { lifting: [EXAMPLE_HANDS] }, swaps: 144 },
      verdict: 'holds',
      need: 17,
      have: 17.729167,
    },
    {
      what: 'nothing lifts it and nobody has to: it stays on',
      given: { shop: { lifting: [EXAMPLE_HANDS] }, swaps: 0 },
      verdict: 'holds if',
      need: 95,
      have: 17.729167,
    },
    {
      what: 'a forklift whose load sits 600 mm out instead of 500',
      given: {
        rotary: { mass: 400, base: { along: 1200 } },
        shop: { lifting: [{ ...EXAMPLE_FORKLIFT, capacity: 450 }] },
        swaps: 144,
      },
      verdict: 'fails',
      need: 400,
      have: 375,
    },
    {
      what: 'means that nobody names, and the rotary has to come off',
      given: { shop: { lifting: 'unknown' }, swaps: 144 },
      verdict: 'open',
    },
    {
      what: 'means that nobody names, and it may stay on',
      given: { shop: { lifting: 'unknown' }, swaps: 0 },
      verdict: 'holds if',
    },
  ],
});
