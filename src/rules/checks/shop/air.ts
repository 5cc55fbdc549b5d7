import { machine } from '../../inputs/machine.ts';
import { rotary } from '../../inputs/rotary.ts';
import { site } from '../../inputs/site.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { standsAlready } from '../../sides/owned.ts';
import { needsInput, theInput } from '../../sides/single.ts';

export const air = defineCheck({
  id: 'air',
  stage: 'shop',
  about: 'arrangement',
  unit: 'L/min',
  sense: 'at-most',
  applies: (of) => !standsAlready(of) || of.rotary.row !== null,
  comparisons: [
    {
      what: 'air flow',
      when: (of) => !standsAlready(of),
      need: needsInput(['machine'], machine.airFlow),
      have: theInput([], site.airFlow),
    },
    {
      what: 'air pressure',
      unit: 'bar',
      // a mill that is owned has its air: the rotary may want a higher pressure
      need: greatest(['rotary', 'machine'], (of) => [
        ...(standsAlready(of)
          ? []
          : [term('pressure of the machine', { bar: rises(machine.airBar) }, (values) => values.bar)]),
        ...(of.rotary.row === null
          ? []
          : [term('pressure of the rotary', { bar: rises(rotary.airBar) }, (values) => values.bar)]),
      ]),
      have: theInput([], site.airBar),
    },
  ],
  // a compressor has a plate, and a supplier who reads it
  advisory: (of) => of.shop.site.silent.air,
  formula:
    'air of the machine ≤ air of the compressor; greatest pressure of machine and rotary ≤ its pressure',
  source: 'common practice, no source',
  remedies: ['larger-compressor'],
  examples: [
    {
      what: '110 L/min at 6 bar from a compressor with 110 L/min at 7 bar',
      given: { shop: { air: { flow: 110, bar: 7 } } },
      verdict: 'holds',
      need: 110,
      have: 110,
    },
    {
      what: 'a compressor with 90 L/min',
      given: { shop: { air: { flow: 90, bar: 7 } } },
      verdict: 'fails',
      need: 110,
      have: 90,
    },
    {
      what: 'a rotary that wants 8 bar, on a mill that is owned',
      given: { rotary: { air: { bar: 8 } }, shop: { machine: 'example-mill', air: { flow: 10, bar: 7 } } },
      verdict: 'fails',
      need: 8,
      have: 7,
    },
    {
      what: 'a compressor of which nobody knows the flow',
      given: { shop: { air: { flow: 'unknown', bar: 7 } } },
      verdict: 'open',
    },
  ],
});
