import wrapAnsi from 'wrap-ansi';
import { type CatalogDiff, type ChangedValue, catalogDiff, isOffer, type RowDiff } from '../catalog/diff.ts';
import { readCatalog } from '../catalog/read.ts';
import type { RowValue } from '../catalog/row-values.ts';
import { printable } from '../documents/printable.ts';
import { describeProblem } from '../documents/problem.ts';
import { formatQuantity } from '../quantities/format-quantity.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { MACHINE_VALUE_WORDS, ROTARY_VALUE_WORDS } from '../report/wording/catalog-values.ts';
import { filePath } from './file-path.ts';
import { type Lines, PROCESS_LINES } from './lines.ts';
import { UNUSABLE } from './outcome-codes.ts';

interface DiffOptions {
  readonly format?: 'text' | 'json' | 'markdown';
  readonly units?: LengthUnits;
}

const WIDTH = 80;

/**
 * `fivesides catalog diff`: rows that only one of two catalogs has, and values that are not the same in both, as text or JSON.
 * Exit code 0, whether they differ or not; 2 where one of them cannot be read.
 */
export async function catalogDiffCommand(
  [before, after]: readonly [string, string],
  options: DiffOptions = {},
  lines: Lines = PROCESS_LINES,
  cwd: string = process.cwd(),
): Promise<number> {
  const [old, now] = [readCatalog([filePath(before, cwd)]), readCatalog([filePath(after, cwd)])];
  if (!old.ok || !now.ok) {
    const problems = [old, now].flatMap((each) => (each.ok ? [] : each.problems));
    for (const problem of problems) lines.remark(describeProblem(problem));
    return UNUSABLE;
  }
  const diff = catalogDiff(old.value, now.value);
  if (options.format === 'json') lines.result(JSON.stringify(diff, null, 2));
  else
    for (const line of diffLines(diff, [before, after], options.units ?? 'mm')) lines.result(printable(line));
  return 0;
}

function diffLines(
  { currency, rows }: CatalogDiff,
  [before, after]: readonly [string, string],
  units: LengthUnits,
): readonly string[] {
  const count = (change: RowDiff['change']) => rows.filter((row) => row.change === change).length;
  const money =
    currency.before === currency.after ? [] : [`Currency: ${currency.before} → ${currency.after}`];
  if (rows.length === 0 && money.length === 0)
    return [`${before} and ${after} hold the same rows and values.`];
  return [
    `From ${before} to ${after}: ${count('added')} added, ${count('removed')} removed, ${count('changed')} changed.`,
    ...money,
    ...rows.flatMap((row) => rowLines(row, currency, units)),
  ];
}

function rowLines(row: RowDiff, currency: CatalogDiff['currency'], units: LengthUnits): readonly string[] {
  const { list, id, change, renamedFrom, values } = row;
  const renamed = renamedFrom === undefined ? '' : ` (with the values of ${renamedFrom}, which is gone)`;
  return [
    `${change} ${list}[${id}]${renamed}`,
    ...values.flatMap((value) => valueLines(row, value, currency, units)),
  ];
}

function valueLines(
  { list }: RowDiff,
  { path, before, after }: ChangedValue,
  currency: CatalogDiff['currency'],
  units: LengthUnits,
): readonly string[] {
  const unit = unitOf(list, path);
  const shown = (value: RowValue, own: string) => said(value, path, unit, own, units);
  const line = `${path}: ${shown(before, currency.before)} → ${shown(after, currency.after)}`;
  const [first = '', ...others] = wrapAnsi(line, WIDTH - 6).split('\n');
  return [`  ${first}`, ...others.map((each) => `      ${each}`)];
}

function said(value: RowValue, path: string, unit: string, currency: string, units: LengthUnits): string {
  if (value === null) return isOffer(path) ? 'not offered' : 'none';
  if (typeof value !== 'number') return String(value);
  return formatQuantity(value, unit, {
    shownIn: units,
    beside: true,
    first: units,
    currency: currency === 'unknown' ? '' : currency,
  }).trim();
}

/** The unit of a value by its path; a list or a map is asked for what its values share. */
function unitOf(list: RowDiff['list'], path: string): string {
  const words = list === 'rotaries' ? ROTARY_VALUE_WORDS : MACHINE_VALUE_WORDS;
  const steps = path.replace(/^hold\.[a-z-]+\./, 'hold.').replace(/^(clearance)\[\d+\]/, '$1');
  for (let each = steps; each !== ''; each = each.replace(/(?:^|[.[])[^.[]*$/, '')) {
    const found = words[each];
    if (found !== undefined) return found.unit;
  }
  return '';
}
