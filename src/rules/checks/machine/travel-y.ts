import { defineCheck } from '../../judging/check.ts';
import { TIP_REACH, tipWidth, travel, travelBeside } from '../../sides/travel.ts';

const UPRIGHT = {
  part: { size: [60, 60, 80], approaches: ['around'], holding: { height: 50 } },
  tools: { largestCutter: 20 },
  rotary: { class: 'single-axis', faceOffset: 230 },
} as const;

export const travelY = defineCheck({
  id: 'travel-y',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [
    {
      what: 'all the tips along Y',
      need: tipWidth('y'),
      have: travel('y'),
    },
    {
      what: 'tips on the far side of the rotary center',
      need: TIP_REACH.y.high,
      have: travelBeside('y', 'high'),
      secondary: true,
    },
    {
      what: 'tips on the near side of the rotary center',
      need: TIP_REACH.y.low,
      have: travelBeside('y', 'low'),
      secondary: true,
    },
  ],
  formula:
    'width of the union of the tip boxes along Y ≤ Y travel, and each side of it from where the rotary stands; an upright axis: from the faceplate, which stands faceplate offset + plates above the table, to the heights of the spindle',
  source: 'geometry; travel taken as centered on the table',
  remedies: ['larger-machine', 'other-mounting', 'smaller-part', 'lower-fixture'],
  examples: [
    {
      what: 'a faceplate 230 mm over the table, work of 50 to 130 mm over it, the spindle from 280 to 370 mm',
      given: { ...UPRIGHT, machine: { spindle: 'horizontal', spindleToTable: [280, 370] } },
      verdict: 'holds',
      need: 90,
      have: 90,
    },
    {
      what: 'a spindle that stops 20 mm over the foot of the work',
      given: { ...UPRIGHT, machine: { spindle: 'horizontal', spindleToTable: [300, 600] } },
      verdict: 'fails',
      need: -50,
      have: -70,
    },
    {
      what: 'the same on a plate of 30 mm',
      given: { ...UPRIGHT, machine: { spindle: 'horizontal', spindleToTable: [300, 600] }, plates: 30 },
      verdict: 'holds',
      need: 90,
      have: 300,
    },
    {
      what: 'a spindle that does not come up to the end of the work',
      given: { ...UPRIGHT, machine: { spindle: 'horizontal', spindleToTable: [100, 360] } },
      verdict: 'fails',
      need: 140,
      have: 130,
    },
    {
      what: 'heights of the spindle that the catalog leaves out',
      given: { ...UPRIGHT, machine: { spindle: 'horizontal', spindleToTable: 'unknown' } },
      verdict: 'open',
    },
    {
      what: 'top at 50 + 10 mm to the rear, sides from 10 to 110 + 10 mm to the front: 180 mm in all',
      given: {
        part: {
          size: [60, 80, 60],
          approaches: ['top', 'sides'],
          holding: { height: 40 },
        },
        tools: { largestCutter: 20 },
        rotary: { faceOffset: 10 },
        machine: { travel: [600, 240, 400] },
        mounting: 'tilt-along-x',
      },
      verdict: 'holds',
      need: 180,
      have: 240,
    },
    {
      what: 'wide enough in all, but the lean needs 120 mm to the front',
      given: {
        part: {
          size: [60, 80, 60],
          approaches: ['top', 'sides'],
          holding: { height: 40 },
        },
        tools: { largestCutter: 20 },
        rotary: { faceOffset: 10 },
        machine: { travel: [600, 220, 400] },
        mounting: 'tilt-along-x',
      },
      verdict: 'fails',
      need: 120,
      have: 110,
    },
    {
      what: 'a height that is not known',
      given: {
        part: { size: [60, 80, [20, 400]] },
        machine: { travel: [600, 300, 400] },
        mounting: 'tilt-along-x',
      },
      verdict: 'open',
    },
  ],
});
