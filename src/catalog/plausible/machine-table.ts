import type { Machine } from '../catalog.ts';
import { COMMON_PRACTICE, GEOMETRY, known, type PlausibleRule, when } from './rule.ts';
import { isSlotWidth, SLOT_WIDTH } from './slot-width.ts';

/** Table along X over the X travel. */
const TABLE_X = { least: 0.5, most: 4 };
/** Table along Y over the travel across it. */
const TABLE_Y = { least: 0.3, most: 3 };
/** Throat over the Y travel. */
const LEAST_THROAT = 0.7;
/** Table above the floor, mm. */
const HEIGHT = { least: 400, most: 1600 };
/** Table load, kg/m². */
const LOAD = { least: 150, most: 6000 };
/** Pitch of slots over their width. */
const PITCH = { least: 3, most: 12 };

const slotsOf = (row: Machine) =>
  row.builtIn === null
    ? { path: ['table', 'slots'], slots: row.table?.slots }
    : { path: ['builtIn', 'slots'], slots: row.builtIn.slots };

/** The table of a machine and its slots. */
export const MACHINE_TABLE_RULES: readonly PlausibleRule<Machine>[] = [
  {
    id: 'table-near-x-travel',
    reason: 'a table is about as long as what is reached of it',
    source: COMMON_PRACTICE,
    doubts: ({ table, travel: [x] }, { say }) => {
      const ratio = known(table?.size[0]) / known(x);
      return when(ratio < TABLE_X.least || ratio > TABLE_X.most, () => ({
        path: ['table', 'size', 0],
        found: `is ${say(known(table?.size[0]), 'mm')}, and the X travel is ${say(known(x), 'mm')}`,
        expected: `between half and ${TABLE_X.most} times the X travel`,
      }));
    },
  },
  {
    id: 'table-near-y-travel',
    reason: 'what lies outside of the travel is never reached',
    source: COMMON_PRACTICE,
    doubts: ({ table, travel: [, y, z], spindle }, { say }) => {
      // the nose of a level spindle crosses the table along Z
      const level = spindle === 'horizontal';
      const across = known(level ? z : y);
      const ratio = known(table?.size[1]) / across;
      return when(ratio < TABLE_Y.least || ratio > TABLE_Y.most, () => ({
        path: ['table', 'size', 1],
        found: `is ${say(known(table?.size[1]), 'mm')}, and the ${level ? 'Z' : 'Y'} travel is ${say(across, 'mm')}`,
        expected: `between a third and ${TABLE_Y.most} times that travel`,
      }));
    },
  },
  {
    id: 'throat-near-y-travel',
    reason: 'at the end of the travel the far edge of the table stands under the head',
    source: COMMON_PRACTICE,
    doubts: ({ throat, travel: [, y] }, { say }) =>
      when(known(throat) < LEAST_THROAT * known(y), () => ({
        path: ['throat'],
        found: `is ${say(known(throat), 'mm')}, and the Y travel is ${say(known(y), 'mm')}`,
        expected: 'about the Y travel, or more',
      })),
  },
  {
    id: 'table-at-hand',
    reason: 'a person loads it',
    source: COMMON_PRACTICE,
    doubts: ({ table }, { say }) =>
      when(known(table?.height) < HEIGHT.least || known(table?.height) > HEIGHT.most, () => ({
        path: ['table', 'height'],
        found: `is ${say(known(table?.height), 'mm')}`,
        expected: `between ${say(HEIGHT.least, 'mm')} and ${say(HEIGHT.most, 'mm')} above the floor`,
      })),
  },
  {
    id: 'table-load-for-size',
    reason: `a table carries ${LOAD.least} to ${LOAD.most} kg a square meter`,
    source: COMMON_PRACTICE,
    doubts: ({ table }, { say }) => {
      const area = (known(table?.size[0]) * known(table?.size[1])) / 1e6;
      const load = known(table?.load) / area;
      return when(load < LOAD.least || load > LOAD.most, () => ({
        path: ['table', 'load'],
        found: `is ${say(known(table?.load), 'kg')}, ${say(load, 'kg')} a square meter`,
        expected: `a ${load < LOAD.least ? 'larger' : 'smaller'} load for its size`,
      }));
    },
  },
  {
    id: 'slot-width',
    reason: SLOT_WIDTH.reason,
    source: SLOT_WIDTH.source,
    doubts: (row, { say }) => {
      const { path, slots } = slotsOf(row);
      const width = slots?.width;
      return when(typeof width === 'number' && !isSlotWidth(width), () => ({
        path: [...path, 'width'],
        found: `is ${say(known(width), 'mm')}, which is no width of a T-slot`,
        expected: SLOT_WIDTH.expected,
      }));
    },
  },
  {
    id: 'slot-pitch-for-width',
    reason: 'closer slots leave no iron between them; ISO 299 pitches are 3.5 to 9.3 widths',
    source: `ISO 299 sizes; how far others go is ${COMMON_PRACTICE}`,
    doubts: (row, { say }) => {
      const { path, slots } = slotsOf(row);
      const ratio = known(slots?.pitch) / known(slots?.width);
      return when(ratio < PITCH.least || ratio > PITCH.most, () => ({
        path: [...path, 'pitch'],
        found: `is ${say(known(slots?.pitch), 'mm')} for slots ${say(known(slots?.width), 'mm')} wide`,
        expected: `${PITCH.least} to ${PITCH.most} times the width`,
      }));
    },
  },
  {
    id: 'slots-in-table',
    reason: 'all slots lie in the table',
    source: GEOMETRY,
    doubts: ({ table }, { say }) => {
      if (table === null || table.slots.along === 'unknown') return [];
      const { count, width, pitch, along } = table.slots;
      const across = known(table.size[along === 'x' ? 1 : 0]);
      const taken = (known(count) - 1) * known(pitch) + known(width);
      return when(known(count) > 0 && taken > across, () => ({
        path: ['table', 'slots'],
        found: `take ${say(taken, 'mm')} across, and the table is ${say(across, 'mm')} there`,
        expected: 'fewer slots, a smaller pitch, or slots along the other axis',
      }));
    },
  },
];
