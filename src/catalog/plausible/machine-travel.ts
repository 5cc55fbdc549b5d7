import type { Machine, StatedPair } from '../catalog.ts';
import {
  type Doubt,
  ends,
  GEOMETRY,
  known,
  type PlausibleRule,
  type Surroundings,
  spanOf,
  when,
} from './rule.ts';

/** How far two statements of one movement may be apart: rounding to whole inches or centimeters. */
const ROUNDED = { share: 0.01, mm: 3 };
const AXES = ['X', 'Y', 'Z'] as const;

const isLevel = ({ spindle }: Machine): boolean => spindle === 'horizontal';

function asFarAs(
  row: Machine,
  axis: 0 | 1 | 2,
  range: StatedPair,
  path: readonly string[],
  { say }: Surroundings,
): readonly Doubt[] {
  const travel = known(row.travel[axis]);
  const span = spanOf(range);
  const apart = Math.abs(span - travel);
  return when(apart > Math.max(ROUNDED.mm, travel * ROUNDED.share), () => ({
    path,
    found: `spans ${say(span, 'mm')}, and the ${AXES[axis]} travel is ${say(travel, 'mm')}`,
    expected: 'ends that are as far apart as the travel',
  }));
}

/** Travels, and what is stated of them from the table. */
export const MACHINE_TRAVEL_RULES: readonly PlausibleRule<Machine>[] = [
  {
    id: 'nose-goes-as-far-as-z',
    reason: 'nose to table at the top less the same at the bottom is the Z travel',
    source: GEOMETRY,
    doubts: (row, around) => asFarAs(row, 2, row.noseToTable, ['noseToTable'], around),
  },
  {
    id: 'spindle-goes-as-far-as-y',
    reason: 'a level spindle goes up and down by its Y travel',
    source: GEOMETRY,
    doubts: (row, around) =>
      row.spindleToTable === null ? [] : asFarAs(row, 1, row.spindleToTable, ['spindleToTable'], around),
  },
  {
    id: 'reach-goes-as-far-as-travel',
    reason: 'both are the same movement, seen from the table',
    source: GEOMETRY,
    doubts: (row, around) => {
      const reach = row.builtIn?.reach;
      if (reach === undefined) return [];
      return [
        ...asFarAs(row, 0, reach.x, ['builtIn', 'reach', 'x'], around),
        ...asFarAs(row, 1, reach.y, ['builtIn', 'reach', 'y'], around),
        ...asFarAs(row, 2, reach.noseToFace, ['builtIn', 'reach', 'noseToFace'], around),
      ];
    },
  },
  {
    id: 'nose-above-table',
    reason: 'at the bottom of Z the nose stops above the table',
    source: GEOMETRY,
    doubts: (row, { say }) => {
      const [bottom] = ends(row.noseToTable);
      return when(!isLevel(row) && bottom < 0, () => ({
        path: ['noseToTable', 0],
        found: `is ${say(bottom, 'mm')}, below the table`,
        expected: 'a height above the table',
      }));
    },
  },
  {
    id: 'addition-within-travel',
    reason: 'what raises the nose moves its travel up; beyond the travel the table is out of reach',
    source: GEOMETRY,
    doubts: (row, { say }) =>
      row.clearance.flatMap(({ adds }, at) =>
        when(adds > known(row.travel[2]), () => ({
          path: ['clearance', at, 'adds'],
          found: `is ${say(adds, 'mm')}, and the Z travel is ${say(known(row.travel[2]), 'mm')}`,
          expected: 'less than the Z travel',
        })),
      ),
  },
];
