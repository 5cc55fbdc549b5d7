import wrapAnsi from 'wrap-ansi';
import type { List } from '../catalog/catalog.ts';
import { type Gap, gapsOf, openWithout } from '../catalog/gaps.ts';
import { missingValues, type RowWithGaps } from '../catalog/missing.ts';
import { doubtsIn } from '../catalog/plausible/doubts-in.ts';
import { type CatalogInFiles, readCatalogFiles } from '../catalog/read.ts';
import { twinsIn } from '../catalog/twins.ts';
import { unusableIn } from '../catalog/unusable.ts';
import { printable } from '../documents/printable.ts';
import { describeProblem, inOrder, type Problem, type Reading } from '../documents/problem.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { UNUSABLE } from './outcome-codes.ts';

const WIDTH = 80;

/**
 * `fivesides catalog check`: every problem of the catalog in these folders, one a line, exit code 2. Where there is none:
 * what is hard to believe, rows that may be one, rows that nothing can use, what rows lack and which checks that leaves open.
 * None of that makes the catalog unusable: exit code 0.
 */
export async function catalogCheck(
  folders: readonly string[],
  lines: Lines = PROCESS_LINES,
): Promise<number> {
  const reading: Reading<CatalogInFiles> = readCatalogFiles(folders);
  if (!reading.ok) {
    for (const problem of reading.problems) lines.remark(describeProblem(problem));
    return UNUSABLE;
  }
  for (const line of summary(reading.value)) lines.result(printable(line));
  return 0;
}

function summary(read: CatalogInFiles): readonly string[] {
  const { rotaries, machines } = read.catalog;
  const files = new Set([...rotaries, ...machines].map(({ from }) => from.file)).size;
  const counts = [countedRows(rotaries.length, 'rotaries'), countedRows(machines.length, 'machines')];
  const order = read.files.map(({ file }) => file);
  const told = (title: string, problems: readonly Problem[]): readonly string[] =>
    problems.length === 0
      ? []
      : ['', `${title} (${problems.length}):`, ...inOrder(problems, order).map(describeProblem)];
  return [
    `${counts.join(' and ')} in ${counted(files, 'file', 'files')}: no problems.`,
    ...told('Hard to believe, and used as it stands', doubtsIn(read)),
    ...told('Perhaps the same thing twice', twinsIn(read)),
    ...told('Of no use to any arrangement, or only with something added', unusableIn(read)),
    '',
    ...missing(read),
  ];
}

function missing({ catalog }: CatalogInFiles): readonly string[] {
  const rows = missingValues(catalog);
  const [only] = rows;
  if (only === undefined) return ['No row lacks anything.'];
  const lines =
    rows.length === 1
      ? ['Values that a row lacks, and the checks that stay open without them:', ...valueLines(only)]
      : gapLines(gapsOf(catalog), rows);
  return lines.flatMap(wrapped);
}

const valueLines = ({ row, from, missing: values }: RowWithGaps): readonly string[] => [
  `${from.file}:${from.line}: ${row}`,
  ...values.map((value) => `  ${value.path}: ${openWithout(value)}`),
];

/** What a value leaves open is told once, and what all rows lack not row by row: a list may have thousands. */
function gapLines(gaps: readonly Gap[], rows: readonly RowWithGaps[]): readonly string[] {
  const ofAll = new Set(
    gaps.filter(({ rows, of }) => rows === of).map(({ list, path }) => `${list} ${path}`),
  );
  const own = rows.flatMap(({ list, row, from, missing: values }) => {
    const paths = values.map(({ path }) => path).filter((path) => !ofAll.has(`${list} ${path}`));
    return paths.length === 0 ? [] : [`${from.file}:${from.line}: ${row}`, `  ${paths.join(', ')}`];
  });
  const title = ofAll.size === 0 ? 'Row by row:' : 'Row by row, besides what all of them lack:';
  return [
    'What to find out first: what rows lack, and the checks that stay open:',
    ...gaps.map(gapLine),
    ...(own.length === 0 ? [] : ['', title, ...own]),
  ];
}

const gapLine = (gap: Gap): string =>
  `  ${gap.path}, in ${gap.rows} of ${countedRows(gap.of, gap.list)}: ${openWithout(gap)}`;

/** Lines of a list, broken between words, the rest of each set in. */
const wrapped = (line: string): readonly string[] => {
  if (!line.startsWith('  ')) return [line];
  const [first = '', ...others] = wrapAnsi(line.trim(), WIDTH - 6, { hard: false }).split('\n');
  return [`  ${first}`, ...others.map((each) => `      ${each}`)];
};

const countedRows = (count: number, list: List): string =>
  list === 'rotaries' ? counted(count, 'rotary', 'rotaries') : counted(count, 'machine', 'machines');

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
