import { machine } from '../../inputs/machine.ts';
import { part } from '../../inputs/part.ts';
import { rotary } from '../../inputs/rotary.ts';
import { assume } from '../../inputs/setting.ts';
import type { Case } from '../../judging/case.ts';
import { defineCheck } from '../../judging/check.ts';
import { greatest, least } from '../../judging/side.ts';
import { rises, term } from '../../judging/term.ts';
import { alongX, isUpright } from '../../sides/base.ts';

const overhang = greatest(['part'], () => [
  term('fixture and part', { f: rises(part.fixtureHeight), h: rises(part.height) }, (of) => of.f + of.h),
]);

const free = least(['part'], () => [
  term(
    'thickness × ratio',
    { d: rises(part.width), ratio: rises(assume.tailstockRatio) },
    (of) => of.d * of.ratio,
  ),
  term(
    'thickness × ratio',
    { d: rises(part.length), ratio: rises(assume.tailstockRatio) },
    (of) => of.d * of.ratio,
  ),
]);

/** Rotary, work and tailstock in one row on the table, from the far end of the base. */
const row = greatest(['part', 'rotary'], () => [
  term(
    'rotary, work and tailstock',
    {
      p: rises(rotary.faceOffset),
      f: rises(part.fixtureHeight),
      h: rises(part.height),
      tailstock: rises(rotary.tailstockLength),
    },
    (of) => of.p + of.f + of.h + of.tailstock,
  ),
]);

const tableAlong = (of: Case) => (alongX(of) ? machine.tableX : machine.tableY);
const table = least(['machine', 'mounting'], (of) => [
  term('table along the axis', { length: rises(tableAlong(of)) }, (values) => values.length),
]);

const BAR = {
  shape: 'round',
  diameter: 30,
  stands: 'upright',
  approaches: ['around'],
  holding: { height: 0 },
} as const;
const LEVEL = {
  class: 'single-axis',
  faceOffset: 220,
  base: { along: 200 },
  tailstock: { length: 180 },
} as const;

export const tailstock = defineCheck({
  id: 'tailstock',
  stage: 'rotary-class',
  about: 'part',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => of.rotary.axes === 1,
  comparisons: [
    {
      what: 'overhang from the faceplate',
      need: overhang,
      have: free,
      // a row on the table has no upright axis in it
      easings: [{ measure: 'tailstock', when: (of) => !isUpright(of), all: [{ need: row, have: table }] }],
    },
  ],
  formula:
    'fixture + length ≤ ratio × thickness; longer: a tailstock or steady, if rotary, work and tailstock stand on the table',
  source: 'common practice, no source; the ratio is an assumption',
  remedies: ['tailstock', 'larger-machine'],
  examples: [
    {
      what: 'a 30 mm bar out by 75 mm',
      given: {
        part: { ...BAR, length: 75 },
        rotary: LEVEL,
        mounting: 'axis-along-x',
      },
      verdict: 'holds',
      need: 75,
      have: 75,
    },
    {
      what: 'the same bar out by 300 mm, with room for a tailstock',
      given: {
        part: { ...BAR, length: 300 },
        rotary: LEVEL,
        machine: { table: { size: [700, 400] } },
        mounting: 'axis-along-x',
      },
      verdict: 'holds if',
      need: 300,
      have: 75,
    },
    {
      what: 'no room for it on the table',
      given: {
        part: { ...BAR, length: 300 },
        rotary: LEVEL,
        machine: { table: { size: [690, 400] } },
        mounting: 'axis-along-x',
      },
      verdict: 'fails',
      need: 300,
      have: 75,
    },
    {
      what: 'upright: no tailstock stands in a row with it on the table',
      given: {
        part: { ...BAR, length: 300 },
        rotary: LEVEL,
        machine: { spindle: 'horizontal', table: { size: [700, 400] } },
      },
      verdict: 'fails',
      need: 300,
      have: 75,
    },
    {
      what: 'a length that is not known',
      given: {
        part: { ...BAR, length: [40, 900] },
        rotary: LEVEL,
        machine: { table: { size: [700, 400] } },
        mounting: 'axis-along-x',
      },
      verdict: 'open',
    },
  ],
});
