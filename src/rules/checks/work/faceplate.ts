import { fixed } from '../../inputs/input.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { theInput } from '../../sides/single.ts';

const planDiameter = greatest(['part'], () => [
  term('the part', { r: rises(part.planRadius) }, (of) => 2 * of.r),
]);

export const faceplate = defineCheck({
  id: 'faceplate',
  stage: 'envelope',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => of.part?.heldByCollet !== true,
  comparisons: [
    {
      what: 'plan diameter',
      when: (of) => of.rotary.hasFaceplate,
      need: planDiameter,
      have: theInput(['rotary'], rotary.faceplate),
      easings: [
        {
          measure: 'rigid-fixture',
          all: [{ need: planDiameter, have: theInput(['rotary'], rotary.swing) }],
        },
      ],
    },
    {
      what: 'a rotary without a faceplate takes bars only',
      when: (of) => !of.rotary.hasFaceplate,
      need: planDiameter,
      have: theInput([], fixed('no faceplate', 0)),
    },
  ],
  formula: '2·r ≤ faceplate; over it and within the swing, a rigid oversize fixture carries the part',
  source: 'geometry; common practice, no source',
  remedies: ['larger-rotary', 'smaller-part'],
  examples: [
    {
      what: 'a part as wide as the faceplate',
      given: { part: { size: [60, 80, 40] }, rotary: { faceplate: 100 } },
      verdict: 'holds',
      need: 100,
      have: 100,
    },
    {
      what: 'a part wider than the faceplate, within the swing',
      given: {
        part: { size: [60, 80, 40] },
        rotary: { faceplate: 90, swing: 160 },
      },
      verdict: 'holds if',
      need: 100,
      have: 90,
    },
    {
      what: 'a part wider than the swing',
      given: {
        part: { size: [120, 160, 40] },
        rotary: { faceplate: 90, swing: 160 },
      },
      verdict: 'fails',
      need: 200,
      have: 90,
    },
    {
      what: 'a width that may be over both',
      given: {
        part: { size: [60, [60, 400], 40] },
        rotary: { faceplate: 90, swing: 160 },
      },
      verdict: 'open',
    },
  ],
});
