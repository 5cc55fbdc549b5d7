import { rotary } from '../../inputs/rotary.ts';
import { assume, setting } from '../../inputs/setting.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { falls, rises, term } from '../../judging/term.ts';
import { sweptDepths } from '../../sides/profile.ts';

const tableTop = greatest(['rotary', 'plates'], () => [
  term(
    'table and gap',
    {
      center: falls(rotary.centerHeight),
      plates: falls(setting.plateThickness),
      gap: rises(assume.clearGap),
    },
    (of) => of.gap - of.center - of.plates,
  ),
]);

export const tableClear = defineCheck({
  id: 'table-clear',
  stage: 'fit',
  about: 'part',
  unit: 'mm',
  // the table is a floor: the lowest point of the swept work may not lie below it
  sense: 'at-least',
  // on a level axis the check of the swing looks after the table; a built-in table has none below it,
  // and on a horizontal spindle nothing else tilts
  applies: (of) => of.rotary.axes === 2 && !of.machine.builtIn,
  comparisons: [
    {
      what: 'lowest point of the work as it tilts',
      need: least(['part', 'rotary'], sweptDepths),
      have: tableTop,
    },
  ],
  marginOverTravel: true,
  formula: 'least −v·sin θ + w·cos θ over the outline and the tilt ≥ −(center height + plates) + gap',
  source: 'geometry; common practice, no source',
  remedies: ['riser', 'smaller-part', 'larger-rotary'],
  examples: [
    {
      what: 'at 90° the corner 50 mm from the axis hangs 50 mm down',
      given: {
        part: { size: [60, 80, 20], holding: { diameter: 60, height: 10 } },
        rotary: { faceplate: 60, faceOffset: 10, centerHeight: 60 },
      },
      verdict: 'holds',
      need: -50,
      have: -50,
    },
    {
      what: 'the same 5 mm nearer the table',
      given: {
        part: { size: [60, 80, 20], holding: { diameter: 60, height: 10 } },
        rotary: { faceplate: 60, faceOffset: 10, centerHeight: 55 },
      },
      verdict: 'fails',
      need: -50,
      have: -45,
    },
    {
      what: 'the same on a riser',
      given: {
        part: { size: [60, 80, 20], holding: { diameter: 60, height: 10 } },
        rotary: { faceplate: 60, faceOffset: 10, centerHeight: 55 },
        plates: 5,
      },
      verdict: 'holds',
      need: -50,
      have: -50,
    },
    {
      what: 'an eccentricity that is not known',
      given: {
        part: {
          size: [60, 80, 20],
          holding: { diameter: 60, height: 10 },
          eccentricity: [0, 80],
        },
        rotary: { faceplate: 60, faceOffset: 10, centerHeight: 100 },
      },
      verdict: 'open',
    },
  ],
});
