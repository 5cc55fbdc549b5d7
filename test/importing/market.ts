import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { readCatalog } from '../../src/catalog/read.ts';
import { catalogTable } from '../../src/importing/catalog-table.ts';
import { columnName } from '../../src/importing/mapping/import-map.ts';
import { PLANTED } from './planted-mistakes.ts';
import { workbook } from './workbook.ts';

type Cells = string[];

/** A made-up market in a workbook: the demo over and over, in mixed units, with gaps, and the planted mistakes in it. */
export function marketWorkbook() {
  const reading = readCatalog([join(import.meta.dirname, '..', '..', 'catalog-demo')]);
  if (!reading.ok) throw new Error('the demo cannot be read');
  const chance = seeded(20261126);
  const sheets = { rotaries: [] as Cells[], machines: [] as Cells[] };
  for (const [list, count] of [
    ['rotaries', 300],
    ['machines', 400],
  ] as const) {
    const [headings = [], ...demo] = parse(catalogTable(reading.value, list) ?? '') as Cells[];
    const rows = Array.from({ length: count }, (_, at) => [...(demo[at % demo.length] ?? [])]);
    for (const [at, row] of rows.entries()) row[1] = `${row[1]} ${columnName(700 + at)}`;
    for (const [column, heading] of headings.entries()) inMixedUnits(headings, rows, column, heading, chance);
    // ids come from the names
    sheets[list] = [headings, ...rows].map((cells) => cells.slice(1));
  }
  const places = PLANTED.map(({ list, row, key, cell }) => {
    const headings = sheets[list][0] ?? [];
    const at = key === null ? -1 : headings.findIndex((heading) => heading.split(' ')[0] === key);
    const cells = sheets[list][row - 1];
    if (cells === undefined) throw new Error(`no row ${row}`);
    if (cell === 'the row above again') sheets[list][row - 1] = [...(sheets[list][row - 2] ?? [])];
    else if (cell === 'the name above') cells[0] = sheets[list][row - 2]?.[0] ?? '';
    else if (key === null || at < 0) throw new Error(`no column ${key}`);
    else cells[at] = cell;
    const named = cell.startsWith('the ') || cell === '' ? `row ${row}` : `cell ${columnName(at)}${row}`;
    return `sheet ${list}, ${named}`;
  });
  return { bytes: workbook(sheets), places };
}

/** Some columns in inches and pounds, with cells that say their own unit; some cells empty. */
function inMixedUnits(
  headings: Cells,
  rows: Cells[],
  column: number,
  heading: string,
  chance: () => number,
): void {
  const [path = '', unit] = heading.split(/ [(]|[)]/);
  const other = unit === 'mm' ? { symbol: 'in', factor: 25.4 } : { symbol: 'lb', factor: 0.45359237 };
  const plain = (unit === 'mm' || unit === 'kg') && rows.every((row) => /^-?[\d.]*$/.test(row[column] ?? ''));
  const turned = plain && column % 2 === 0;
  if (turned) headings[column] = `${path} (${other.symbol})`;
  const gaps = !/^(?:id|name|maker|class|kind|hold|rotaryIncluded|spindle$)/.test(path);
  for (const row of rows) {
    const cell = row[column] ?? '';
    if (path === 'rotaryIncluded') row[column] = '';
    else if (gaps && chance() < 0.08) row[column] = ['', '-', 'n/a', '?'][Math.floor(chance() * 4)] ?? '';
    else if (turned && cell !== '')
      row[column] =
        chance() < 0.1 ? `${cell} ${unit}` : String(Number((Number(cell) / other.factor).toFixed(6)));
  }
}

/** Numbers between 0 and 1, the same every time. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
