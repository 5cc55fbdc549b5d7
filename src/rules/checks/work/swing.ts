import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { assume, setting } from '../../inputs/setting.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { falls, rises, term } from '../../judging/term.ts';
import { isUpright } from '../../sides/base.ts';
import { radiusRises, sweptRadius } from '../../sides/stack.ts';

const diameter = greatest(['part'], () => [
  term('the part', radiusRises, (of) => 2 * sweptRadius(of)),
  term('the fixture', { F: rises(part.fixtureDiameter) }, (of) => of.F),
]);

/** What turns freely: the rotary's own swing, and on a level axis the room down to the table. */
const free = least(['rotary', 'plates'], (of) => [
  term('swing', { swing: rises(rotary.swing) }, (values) => values.swing),
  ...(of.rotary.axes === 1 && !isUpright(of)
    ? [
        term(
          'room above the table',
          {
            center: rises(rotary.centerHeight),
            plates: rises(setting.plateThickness),
            gap: falls(assume.swingGap),
          },
          (values) => 2 * (values.center + values.plates - values.gap),
        ),
      ]
    : []),
]);

export const swing = defineCheck({
  id: 'swing',
  stage: 'envelope',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: () => true,
  comparisons: [{ what: 'turning diameter', need: diameter, have: free }],
  formula: '2·max(r + e, F/2) ≤ swing; on a level axis also ≤ 2·(center height + plates − gap)',
  source: 'geometry; common practice, no source',
  remedies: ['larger-rotary', 'smaller-part', 'centered-part', 'riser'],
  examples: [
    {
      what: 'a part 60 × 80 mm turns within its diagonal',
      given: {
        part: { size: [60, 80, 40], holding: { diameter: 90 } },
        rotary: { swing: 100 },
      },
      verdict: 'holds',
      need: 100,
      have: 100,
    },
    {
      what: 'the same part 20 mm off center',
      given: {
        part: {
          size: [60, 80, 40],
          holding: { diameter: 90 },
          eccentricity: 20,
        },
        rotary: { swing: 139 },
      },
      verdict: 'fails',
      need: 140,
      have: 139,
    },
    {
      what: 'a length that nobody knows yet',
      given: { part: { size: [[60, 200], 80, 40] }, rotary: { swing: 180 } },
      verdict: 'open',
    },
    {
      what: 'an upright axis turns over the table, not beside it',
      given: {
        part: { size: [60, 80, 40], approaches: ['around'], holding: { diameter: 90 } },
        rotary: { class: 'single-axis', swing: 200, centerHeight: 54 },
        machine: { spindle: 'horizontal' },
      },
      verdict: 'holds',
      need: 100,
      have: 200,
    },
    {
      what: 'on a level axis the table is nearer than the swing',
      given: {
        part: {
          size: [60, 80, 40],
          approaches: ['around'],
          holding: { diameter: 90 },
        },
        rotary: { class: 'single-axis', swing: 200, centerHeight: 54 },
        mounting: 'axis-along-x',
      },
      verdict: 'fails',
      need: 100,
      have: 98,
    },
  ],
});
