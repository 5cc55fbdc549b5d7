import type { List } from '../catalog/catalog.ts';
import { type Gap, gapsOf } from '../catalog/gaps.ts';
import { doubtsIn } from '../catalog/plausible/doubts-in.ts';
import type { CatalogInFiles } from '../catalog/read.ts';
import { asCatalog, readRows } from '../catalog/read-rows.ts';
import { parseDocument } from '../documents/parse-document.ts';
import { describeProblem, type Problem } from '../documents/problem.ts';
import { catalogText } from './catalog-text.ts';
import { kindOf } from './fields/import-field.ts';
import type { ImportMap } from './mapping/import-map.ts';
import type { ImportedSheet } from './rows/import-sheet.ts';
import { rowId } from './rows/row-id.ts';
import { settleIds } from './rows/settle-ids.ts';
import type { CellFault, TakenRow } from './rows/taken-row.ts';

export interface CatalogFileText {
  readonly name: string;
  readonly text: string;
  readonly rows: number;
}

/** A file as a catalog, and all there is to say about how that went. */
export interface Imported {
  readonly sheets: readonly ImportedSheet[];
  readonly files: readonly CatalogFileText[];
  readonly counts: Readonly<Record<List, number>>;
  readonly faults: readonly CellFault[];
  readonly gaps: readonly Gap[];
  /** values that are hard to believe, by their place in the files */
  readonly doubts: readonly Problem[];
  readonly currency: string | 'unknown';
  /** currencies that headings name, where they are several */
  readonly currencies: readonly string[];
  /** whether somebody has to say what something is */
  readonly open: boolean;
}

/** Rows of a catalog file: a person finds through it, and the reader is quick. */
const ROWS_A_FILE = 400;

/** Makes catalog files of the rows that were taken, one for each list and maker, and reads them as `catalog check` would. */
export function finishImport(
  file: string,
  map: ImportMap,
  sheets: readonly ImportedSheet[],
  there: ReadonlySet<string> = new Set(),
): Imported {
  const settled = settleIds(
    sheets.flatMap(({ rows }) => rows),
    there,
  );
  const currencies = [...new Set(sheets.flatMap(({ plan }) => plan.currencies))];
  const [only] = currencies;
  const named = currencies.length === 1 && only !== undefined ? only : 'unknown';
  const currency = map.currency === 'unknown' ? named : map.currency;
  const files = filesOf(file, map, settled.rows, currency);
  const read = readBack(files);
  const counts = { rotaries: 0, machines: 0 };
  for (const { list } of settled.rows) counts[list] += 1;
  return {
    sheets: sheets.map((each) => ({
      ...each,
      rows: settled.rows.filter(({ sheet }) => sheet === each.plan.sheet),
    })),
    files,
    counts,
    faults: [...sheets.flatMap(({ faults }) => faults), ...settled.faults],
    gaps: gapsOf(read.catalog),
    doubts: doubtsIn(read),
    currency,
    currencies: currencies.length > 1 && map.currency === 'unknown' ? currencies : [],
    open: sheets.some(isOpen) || (currency === 'unknown' && sheets.some(hasPrices)),
  };
}

const isOpen = ({ plan, withoutUnit, words, filled }: ImportedSheet): boolean =>
  (plan.list === 'unknown' && filled > 0) ||
  withoutUnit.size > 0 ||
  [...words.keys()].some(({ fields }) => fields.some(({ cell }) => cell.form === 'choice')) ||
  plan.columns.some(({ left }) => left !== null && left.why !== 'skipped');

const hasPrices = ({ plan, rows }: ImportedSheet): boolean =>
  rows.length > 0 && plan.columns.some(({ fields }) => fields.some((field) => kindOf(field) === 'money'));

function filesOf(
  file: string,
  map: ImportMap,
  rows: readonly TakenRow[],
  currency: string,
): readonly CatalogFileText[] {
  const groups = new Map<string, TakenRow[]>();
  for (const row of rows) {
    const maker = row.maker === null ? '' : `-${rowId(row.maker) ?? 'other'}`;
    const name = `${row.list}${maker}`;
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [row]);
    else group.push(row);
  }
  return [...groups].flatMap(([name, group]) => {
    const pieces = Math.ceil(group.length / ROWS_A_FILE);
    return Array.from({ length: pieces }, (_, at) => {
      const piece = group.slice(at * ROWS_A_FILE, (at + 1) * ROWS_A_FILE);
      const [first] = piece;
      const document = map.source.document === 'unknown' ? file : map.source.document;
      const maker = first?.maker ?? map.source.maker;
      const origin = { ...map.source, file, maker, document: document.slice(0, 120), currency };
      return {
        name: `${name}${pieces === 1 ? '' : `-${at + 1}`}.yaml`,
        text: catalogText(first?.list ?? 'rotaries', piece, origin),
        rows: piece.length,
      };
    });
  });
}

function readBack(texts: readonly CatalogFileText[]): CatalogInFiles {
  const read = texts.map(({ name, text }) => {
    const document = parseDocument(text, name);
    const rows = document.ok ? readRows({ file: name, document: document.value }) : document;
    if (!document.ok || !rows.ok)
      throw new Error(`what was written cannot be read: ${firstOf(rows.ok ? [] : rows.problems)}`);
    return { file: { file: name, document: document.value }, rows: rows.value };
  });
  return { catalog: asCatalog(read.map(({ rows }) => rows)), files: read.map(({ file }) => file) };
}

const firstOf = ([first]: readonly Problem[]): string =>
  first === undefined ? 'no reason' : describeProblem(first);
