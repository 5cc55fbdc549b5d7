import { isMap } from '../documents/fields/strict-map.ts';
import { parseDocument } from '../documents/parse-document.ts';
import { type Problem, type Reading, wholeFile } from '../documents/problem.ts';
import type { Catalog, Provenance } from './catalog.ts';
import { filesCrossChecked } from './files-cross-checks.ts';
import { asCatalog, type FileRows, readRows } from './read-rows.ts';

/**
 * Reads a catalog that a decision carries: as a catalog file, by the same rules, and where each row came from as it is
 * written there. Lines in problems are those of the catalog alone. Never throws.
 */
export function readCarriedCatalog(carried: unknown, file: string): Reading<Catalog> {
  if (!isMap(carried))
    return wholeFile(file, 'there is no catalog', 'expected the rows that were decided on');
  const text = JSON.stringify({ ...carried, ...eachList(carried, withoutFrom) }, null, 1);
  const document = parseDocument(text, file);
  if (!document.ok) return document;
  const parsed = { file, document: document.value };
  const problems: Problem[] = [...filesCrossChecked([parsed], true)];
  const rows = readRows(parsed);
  if (!rows.ok) problems.push(...rows.problems);
  if (!rows.ok || problems.length > 0) return { ok: false, problems };
  return { ok: true, value: asCatalog([withFrom(rows.value, carried)]) };
}

type RawMap = Readonly<Record<string, unknown>>;
const LISTS = ['rotaries', 'machines'] as const;

const eachList = (carried: RawMap, change: (row: unknown) => unknown): RawMap =>
  Object.fromEntries(
    LISTS.flatMap((list) => {
      const rows = carried[list];
      return Array.isArray(rows) ? [[list, rows.map(change)]] : [];
    }),
  );

function withoutFrom(row: unknown): unknown {
  if (!isMap(row)) return row;
  const { from: _from, ...rest } = row;
  return rest;
}

function withFrom(rows: FileRows, carried: RawMap): FileRows {
  const put = <Row extends { readonly from: Provenance }>(
    list: (typeof LISTS)[number],
    row: Row,
    at: number,
  ) => {
    const all = carried[list];
    const there: unknown = Array.isArray(all) ? all[at] : undefined;
    return { ...row, from: isMap(there) ? provenanceOf(there.from, row.from) : row.from };
  };
  return {
    ...rows,
    rotaries: rows.rotaries.map((row, at) => put('rotaries', row, at)),
    machines: rows.machines.map((row, at) => put('machines', row, at)),
  };
}

/** What is written there, where it is of its kind. */
function provenanceOf(raw: unknown, otherwise: Provenance): Provenance {
  if (!isMap(raw)) return otherwise;
  const text = (key: 'file' | 'maker' | 'document' | 'date'): string => {
    const value = raw[key];
    return typeof value === 'string' ? value : otherwise[key];
  };
  const { line } = raw;
  return {
    file: text('file'),
    line: typeof line === 'number' && Number.isSafeInteger(line) ? line : otherwise.line,
    maker: text('maker'),
    document: text('document'),
    date: text('date'),
  };
}
