import { fixed } from '../../inputs/input.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { theInput } from '../../sides/single.ts';

const barDiameter = greatest(['part'], () => [
  term('the bar', { r: rises(part.planRadius) }, (of) => 2 * of.r),
]);

export const collet = defineCheck({
  id: 'collet',
  stage: 'envelope',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => of.part?.heldByCollet === true && of.rotary.class === 'collet-indexer',
  comparisons: [
    {
      what: 'bar diameter',
      when: (of) => of.rotary.hasCollet,
      need: barDiameter,
      have: theInput(['rotary'], rotary.collet),
    },
    {
      what: 'a rotary that takes no collet',
      when: (of) => !of.rotary.hasCollet,
      need: barDiameter,
      have: theInput([], fixed('no collet', 0)),
    },
  ],
  formula: 'bar diameter ≤ collet capacity',
  source: 'common practice, no source',
  remedies: ['larger-rotary', 'smaller-part', 'other-class'],
  examples: [
    {
      what: 'a 25 mm bar in a 26 mm collet',
      given: {
        part: {
          shape: 'round',
          diameter: 25,
          length: 60,
          holding: { by: 'collet' },
          approaches: ['around'],
        },
        rotary: { class: 'collet-indexer', collet: 26 },
        mounting: 'axis-along-x',
      },
      verdict: 'holds',
      need: 25,
      have: 26,
    },
    {
      what: 'a 27 mm bar in a 26 mm collet',
      given: {
        part: {
          shape: 'round',
          diameter: 27,
          length: 60,
          holding: { by: 'collet' },
          approaches: ['around'],
        },
        rotary: { class: 'collet-indexer', collet: 26 },
        mounting: 'axis-along-x',
      },
      verdict: 'fails',
      need: 27,
      have: 26,
    },
    {
      what: 'a bar that may be 20 to 30 mm',
      given: {
        part: {
          shape: 'round',
          diameter: [20, 30],
          length: 60,
          holding: { by: 'collet' },
          approaches: ['around'],
        },
        rotary: { class: 'collet-indexer', collet: 26 },
        mounting: 'axis-along-x',
      },
      verdict: 'open',
    },
  ],
});
