import { anythingFromZero } from '../../../quantities/interval.ts';
import { caseInput } from '../../inputs/input.ts';
import { machine } from '../../inputs/machine.ts';
import { assume } from '../../inputs/setting.ts';
import { defineCheck, type EasingRule } from '../../judging/check.ts';
import { greatest, least, type Side } from '../../judging/side.ts';
import { ends, falls, rises, term } from '../../judging/term.ts';
import { stated } from '../../judging/value.ts';
import { standsAlong } from '../../sides/base.ts';
import { holdOf, holdPath } from '../../sides/hold.ts';

type Axis = 'x' | 'y';

/** The base along X or Y of the machine. */
const baseLength = (axis: Axis): Side =>
  greatest(['rotary', 'mounting'], (of) => [
    term(
      `base along ${axis.toUpperCase()}`,
      {
        length: rises(standsAlong(of, axis)),
      },
      (values) => values.length,
    ),
  ]);

const tableLength = { x: machine.tableX, y: machine.tableY };

const table = (axis: Axis): Side =>
  least(['machine'], () => [
    term(
      `table along ${axis.toUpperCase()}`,
      {
        length: rises(tableLength[axis]),
        overhang: rises(assume.tableOverhang),
      },
      (values) => values.length + values.overhang,
    ),
  ]);

/** The bolts stand on the table: enough of the base bears on it, and across the slots some bolt row fits. */
const bearing = (axis: Axis): Side =>
  greatest(['rotary', 'mounting'], (of) => [
    term(
      'bearing part of the base',
      {
        length: rises(standsAlong(of, axis)),
        share: rises(assume.bearingShare),
      },
      (values) => values.length * values.share,
    ),
  ]);

/** The least pitch of the bolts in this mounting; not stated: anything. */
const narrowestPitch = caseInput('narrowest pitch of the bolts', 'mm', [30, 400], (of) => {
  const hold = holdOf(of)?.hold ?? 'unknown';
  const pitches = hold === 'unknown' ? hold : hold.pitches;
  const narrowest = pitches === 'unknown' ? pitches : Math.min(...pitches);
  return stated(narrowest, holdPath(of, 'pitches'), anythingFromZero, false);
});

const boltRow = least(['machine', 'rotary', 'mounting'], () => [
  term(
    'slots left over beside the bolts',
    { count: rises(machine.slotCount), pitch: ends(machine.slotPitch), bolts: falls(narrowestPitch) },
    (values) => (values.count - 1) * values.pitch - values.bolts,
  ),
]);
const NOTHING = greatest([], () => [term('none', {}, () => 0)]);

const boltsOnTable = (axis: Axis): EasingRule => ({
  measure: 'bolts-on-table',
  all: [
    { need: bearing(axis), have: table(axis) },
    { need: NOTHING, have: boltRow },
  ],
});

export const tableFootprint = defineCheck({
  id: 'table-footprint',
  stage: 'fit',
  about: 'arrangement',
  unit: 'mm',
  sense: 'at-most',
  applies: (of) => !of.machine.builtIn,
  comparisons: (['x', 'y'] as const).map((axis) => ({
    what: `base along ${axis.toUpperCase()}`,
    need: baseLength(axis),
    have: table(axis),
    easings: [boltsOnTable(axis)],
  })),
  formula:
    'base (on its back: base across and overall height) ≤ table along X and along Y; an overhang holds if all T-slot bolts stand on the table',
  source: 'common practice, no source',
  remedies: ['other-mounting', 'larger-machine'],
  examples: [
    {
      what: 'a base of 420 × 260 mm along X on a table of 915 × 460 mm',
      given: {
        rotary: { base: { along: 420, across: 260 } },
        machine: { table: { size: [915, 460] } },
        mounting: 'tilt-along-x',
      },
      verdict: 'holds',
      need: 260,
      have: 460,
    },
    {
      what: 'the same base along Y stands over by 20 mm',
      given: {
        rotary: { base: { along: 480, across: 260 } },
        machine: { table: { size: [915, 460] } },
        mounting: 'tilt-along-y',
      },
      verdict: 'holds if',
      need: 480,
      have: 460,
    },
    {
      what: 'a base more than twice as long as the table is deep',
      given: {
        rotary: { base: { along: 940, across: 260 } },
        machine: { table: { size: [1200, 460] } },
        mounting: 'tilt-along-y',
      },
      verdict: 'fails',
      need: 940,
      have: 460,
    },
    {
      what: 'on its back a rotary 500 mm high stands over a table 460 mm deep',
      given: {
        part: { approaches: ['around'] },
        rotary: { class: 'single-axis', base: { along: 420, across: 260 }, height: 500 },
        machine: { spindle: 'horizontal', table: { size: [915, 460] } },
      },
      verdict: 'holds if',
      need: 500,
      have: 460,
    },
    {
      what: 'a table that the catalog leaves out',
      given: { machine: { table: { size: ['unknown', 460] } } },
      verdict: 'open',
    },
  ],
});
