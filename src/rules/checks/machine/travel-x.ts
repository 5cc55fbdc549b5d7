import { defineCheck } from '../../judging/check.ts';
import { TIP_REACH, tipWidth, travel, travelBeside } from '../../sides/travel.ts';

export const travelX = defineCheck({
  id: 'travel-x',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'all the tips along X',
      need: tipWidth('x'),
      have: travel('x'),
    },
    {
      what: 'tips on the far side of the rotary center',
      need: TIP_REACH.x.high,
      have: travelBeside('x', 'high'),
      secondary: true,
    },
    {
      what: 'tips on the near side of the rotary center',
      need: TIP_REACH.x.low,
      have: travelBeside('x', 'low'),
      secondary: true,
    },
  ],
  formula:
    'width of the union of the tip boxes along X ≤ X travel, and each side of it from where the rotary stands',
  source: 'geometry; travel taken as centered on the table',
  remedies: ['larger-machine', 'other-mounting', 'smaller-part', 'lower-fixture'],
  examples: [
    {
      what: 'a part of 60 × 80 mm from the top, a 20 mm cutter: 2·(50 + 10)',
      given: {
        part: { size: [60, 80, 40], approaches: ['top', { slant: 10 }] },
        tools: { largestCutter: 20 },
        machine: { travel: [130, 400, 400] },
        mounting: 'tilt-along-x',
      },
      verdict: 'holds',
      need: 120,
      have: 130,
    },
    {
      what: 'the same where the rotary stands 10 mm to the right',
      given: {
        part: { size: [60, 80, 40], approaches: ['top', { slant: 10 }] },
        tools: { largestCutter: 20 },
        machine: { travel: [130, 400, 400] },
        mounting: 'tilt-along-x',
        place: { x: 10 },
      },
      verdict: 'fails',
      need: 60,
      have: 55,
    },
    {
      what: 'a travel that the catalog leaves out',
      given: { machine: { travel: ['unknown', 400, 400] } },
      verdict: 'open',
    },
  ],
});
