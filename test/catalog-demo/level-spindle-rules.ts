import type { Machine } from '../../src/catalog/catalog.ts';
import { COMMON_PRACTICE, differs, known, pair, type Rule } from './rule.ts';

export const isLevel = ({ spindle }: Machine): boolean => spindle === 'horizontal';
const depth = (row: Machine): number => known(row.table?.size[1] ?? null);

/** Machines whose tool is level and whose Y is upright. */
export const LEVEL_SPINDLE: readonly Rule<Machine>[] = [
  {
    says: 'a level spindle goes up and down over the table as far as the Y axis, and starts near the table',
    reason: 'both are the same movement, seen from the table',
    source: 'geometry',
    breaks: ({ spindleToTable, travel: [, y] }) =>
      spindleToTable !== null &&
      (differs(known(y), pair(spindleToTable)[1] - pair(spindleToTable)[0], 1e-9) ||
        pair(spindleToTable)[0] > 150),
    of: 'yew',
    spoil: (row) => ({ ...row, spindleToTable: [80, 740] }),
  },
  {
    says: 'a level spindle comes to the middle of the table, and back over its edge',
    reason: 'work stands there, and is loaded and measured',
    source: COMMON_PRACTICE,
    breaks: (row) =>
      isLevel(row) &&
      (pair(row.noseToTable)[0] > depth(row) / 2 || pair(row.noseToTable)[1] < depth(row) / 2),
    of: 'yew',
    spoil: (row) => ({ ...row, noseToTable: [-290, 310] }),
  },
  {
    says: 'under a level spindle the footprint is deeper than the table and the nose drawn back',
    reason: 'the column stands behind the table',
    source: COMMON_PRACTICE,
    breaks: (row) =>
      isLevel(row) && known(row.footprint[1]) < depth(row) / 2 + pair(row.noseToTable)[1] + 1000,
    of: 'yew',
    spoil: (row) => ({ ...row, footprint: [3200, 1900, 2900] }),
  },
];
