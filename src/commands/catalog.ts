import type { Catalog } from '../catalog/catalog.ts';
import { missingValues, type RowWithGaps } from '../catalog/missing.ts';
import { readCatalog } from '../catalog/read.ts';
import { printable } from '../documents/printable.ts';
import { describeProblem, type Reading } from '../documents/problem.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { UNUSABLE } from './outcome-codes.ts';

/**
 * `fivesides catalog check`: every problem of the catalog in these folders, one a line, exit code 2; or, where there
 * is none, what its rows lack and which checks that leaves open, exit code 0.
 */
export async function catalogCheck(
  folders: readonly string[],
  lines: Lines = PROCESS_LINES,
): Promise<number> {
  const reading: Reading<Catalog> = readCatalog(folders);
  if (!reading.ok) {
    for (const problem of reading.problems) lines.remark(describeProblem(problem));
    return UNUSABLE;
  }
  for (const line of summary(reading.value)) lines.result(printable(line));
  return 0;
}

function summary(catalog: Catalog): readonly string[] {
  const { rotaries, machines } = catalog;
  const files = new Set([...rotaries, ...machines].map(({ from }) => from.file)).size;
  const counts = [
    counted(rotaries.length, 'rotary', 'rotaries'),
    counted(machines.length, 'machine', 'machines'),
  ];
  const gaps = missingValues(catalog);
  return [
    `${counts.join(' and ')} in ${counted(files, 'file', 'files')}: no problems.`,
    ...(gaps.length === 0
      ? ['No row lacks anything.']
      : ['Values that rows lack, and the checks that stay open without them:', ...gaps.flatMap(rowLines)]),
  ];
}

const rowLines = ({ row, from, missing }: RowWithGaps): readonly string[] => [
  `${from.file}:${from.line}: ${row}`,
  ...missing.map(({ path, checks }) => `  ${path}: ${checks.length === 0 ? 'no check' : checks.join(', ')}`),
];

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
