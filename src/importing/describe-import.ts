import type { List } from '../catalog/catalog.ts';
import { type Gap, openWithout } from '../catalog/gaps.ts';
import { quoted } from '../documents/printable.ts';
import { describeProblem } from '../documents/problem.ts';

import type { Imported } from './finish-import.ts';
import type { PlannedColumn } from './mapping/sheet-plan.ts';
import type { ImportedSheet } from './rows/import-sheet.ts';
import type { CellFault } from './rows/taken-row.ts';

/** What was taken of each sheet, what was left out, and what rows lack. */
export function importSummary(file: string, imported: Imported): readonly string[] {
  const { sheets, gaps, currencies, doubts } = imported;
  return [
    ...sheets.flatMap((sheet) => sheetLines(file, sheet)),
    ...(currencies.length === 0
      ? []
      : [`Prices are in ${currencies.join(' and ')}: say in the map which, and leave the others out.`]),
    ...(gaps.length === 0
      ? []
      : ['What rows lack, and the checks that stay open without it:', ...gaps.map(gapLine)]),
    ...silenceLine(imported),
    ...(doubts.length === 0
      ? []
      : [
          'Hard to believe, and taken as it stands; the cell is named behind the value in the file:',
          ...doubts.map((doubt) => `  ${describeProblem(doubt)}`),
        ]),
  ];
}

/** What has no word for "not known" in a catalog, by the beginning of its path. */
const TAKEN_FOR_NONE: readonly (readonly [list: List, path: string, words: string])[] = [
  ['rotaries', 'tailstock', 'tailstocks'],
  ['machines', 'clearance', 'clearance additions'],
  ['machines', 'rotaryIncluded', 'rotaries that come with a machine'],
];

function silenceLine({ sheets, counts }: Imported): readonly string[] {
  const paths = (list: List) =>
    sheets.flatMap(({ plan }) => (plan.list === list ? plan.columns.flatMap(({ fields }) => fields) : []));
  const silent = TAKEN_FOR_NONE.filter(
    ([list, begin]) => counts[list] > 0 && !paths(list).some(({ path }) => path.startsWith(begin)),
  ).map(([, , words]) => words);
  if (silent.length === 0) return [];
  return [
    `No column names ${silent.join(', ')}, and what a catalog does not name it takes for not offered: add them where they are.`,
  ];
}

/** A cell that is not understood, in one line. */
export function faultLine(file: string, { sheet, row, column, heading, found, expected }: CellFault): string {
  const where = sheet === null ? '' : `sheet ${sheet}, `;
  const cell = column === null ? `row ${row}` : `cell ${column}${row}`;
  return `${file}: ${where}${cell}${heading === null ? '' : ` (${heading})`}: ${found}, ${expected}`;
}

function sheetLines(file: string, sheet: ImportedSheet): readonly string[] {
  const { plan, rows, filled, strays, withoutUnit, words } = sheet;
  const name = plan.sheet === null ? file : `${file}, sheet ${plan.sheet}`;
  if (plan.list === 'skip') return [`${name}: left out, as the map says.`];
  if (plan.headings.length === 0) return [`${name}: no row of headings is understood.`];
  if (plan.list === 'unknown')
    return [`${name}: nothing says whether these are rotaries or machines: say so in the map.`];
  const taken = plan.columns.filter(({ fields }) => fields.length > 0);
  const under = plan.headings.join(' and ');
  return [
    `${name}: ${rows.length} of ${filled} rows under the headings of row ${under} are taken as ${plan.list}.`,
    `  ${counted(taken.length, 'column')} understood: ${taken.map(takenWords).join('; ')}.`,
    ...plan.columns.flatMap((column) => leftLine(column)),
    ...[...withoutUnit].map(([column, count]) => {
      return `  ${columnName(column)}: ${counted(count, 'number')} without a unit, left unknown: write the unit in the map.`;
    }),
    ...[...words].map(([column, { size }]) => {
      const are = size === 1 ? 'is' : 'are';
      return `  ${columnName(column)}: ${counted(size, 'word')} ${are} not understood: say under cells in the map what is meant.`;
    }),
    ...(strays === 0 ? [] : [`  ${counted(strays, 'cell')} under no heading: left out.`]),
  ];
}

const columnName = ({ column, heading }: PlannedColumn): string => `column ${column} ${quoted(heading)}`;

const takenWords = ({ column, heading, fields, unit }: PlannedColumn): string =>
  `${column} ${heading} → ${fields.map(({ path }) => path).join(', ')}${unit === null ? '' : ` in ${unit}`}`;

function leftLine(column: PlannedColumn): readonly string[] {
  if (column.left === null) return [];
  const { why, likely } = column.left;
  if (why === 'skipped') return [`  ${columnName(column)}: left out, as the map says.`];
  if (why === 'twin')
    return [`  ${columnName(column)}: another column is ${likely.join()} already: left out.`];
  const perhaps = likely.length === 0 ? '' : ` (perhaps ${likely.join(', ')})`;
  return [`  ${columnName(column)}: not understood${perhaps}: say in the map what it is, or skip.`];
}

const gapLine = (gap: Gap): string =>
  `  ${gap.list}: ${gap.path} in ${gap.rows} of ${gap.of}: ${openWithout(gap)}`;

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;
