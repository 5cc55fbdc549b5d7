import { rotary } from '../../inputs/rotary.ts';
import { defineCheck } from '../../judging/check.ts';
import { theInput } from '../../sides/single.ts';
import { tiltedRadius } from '../../sides/tilted-radius.ts';

export const tiltSwing = defineCheck({
  id: 'tilt-swing',
  stage: 'rotary-class',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => of.rotary.axes === 2,
  comparisons: [
    {
      what: 'greatest distance from the tilt axis',
      need: tiltedRadius,
      have: theInput(['rotary'], rotary.tiltClearRadius),
    },
  ],
  formula: 'max √(v² + w²) over the outline of part and fixture ≤ radius free for tilting',
  source: 'geometry; common practice, no source',
  remedies: ['larger-rotary', 'lower-fixture', 'smaller-part'],
  examples: [
    {
      what: 'the top edge at 30 and 40 mm from the axis',
      given: {
        part: { size: [36, 48, 20], holding: { diameter: 50, height: 10 } },
        rotary: { faceOffset: 10, tiltClearRadius: 51 },
      },
      verdict: 'holds',
      need: 50,
      have: 51,
    },
    {
      what: 'the same on a table with less room',
      given: {
        part: { size: [36, 48, 20], holding: { diameter: 50, height: 10 } },
        rotary: { faceOffset: 10, tiltClearRadius: 49 },
      },
      verdict: 'fails',
      need: 50,
      have: 49,
    },
    {
      what: 'a fixture height that is not known',
      given: {
        part: { size: [36, 48, 20], holding: { height: [0, 200] } },
        rotary: { tiltClearRadius: 120 },
      },
      verdict: 'open',
    },
  ],
});
