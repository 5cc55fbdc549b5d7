import { isMap } from '../documents/fields/strict-map.ts';
import type { ParsedDocument } from '../documents/parse-document.ts';
import type { Path } from '../documents/place.ts';
import { quoted } from '../documents/printable.ts';
import type { Problem } from '../documents/problem.ts';
import { problemAt } from '../documents/problems-from-issues.ts';

/** A catalog file that could be parsed, whatever else is wrong with it. */
export interface ParsedFile {
  readonly file: string;
  readonly document: ParsedDocument;
}

/**
 * What shows only when the files of a catalog are put together: ids that stand twice, prices in two currencies, a
 * rotary that comes with a machine and is not there. `complete`: every file could be parsed.
 */
export function filesCrossChecked(files: readonly ParsedFile[], complete: boolean): readonly Problem[] {
  return [
    ...doubledIds(files, 'rotaries'),
    ...doubledIds(files, 'machines'),
    ...currencies(files),
    ...(complete ? missingRotaries(files) : []),
  ];
}

type List = 'rotaries' | 'machines';

interface RowAt {
  readonly at: ParsedFile;
  readonly row: Readonly<Record<string, unknown>>;
  readonly path: Path;
}

function rowsOf(files: readonly ParsedFile[], list: List): readonly RowAt[] {
  return files.flatMap((at) => {
    const rows: unknown = isMap(at.document.value) ? at.document.value[list] : undefined;
    if (!Array.isArray(rows)) return [];
    return rows.flatMap((row: unknown, index) => (isMap(row) ? [{ at, row, path: [list, index] }] : []));
  });
}

function doubledIds(files: readonly ParsedFile[], list: List): readonly Problem[] {
  const seen = new Map<string, RowAt>();
  return rowsOf(files, list).flatMap((each) => {
    const { id } = each.row;
    if (typeof id !== 'string') return [];
    const first = seen.get(id.trim());
    if (first === undefined) {
      seen.set(id.trim(), each);
      return [];
    }
    const { line, column } = first.at.document.placeOf([...first.path, 'id']);
    const found = `stands at ${first.at.file}:${line}:${column} too`;
    const fault = { path: [...each.path, 'id'], found, expected: 'expected an id of its own for each row' };
    return [problemAt(fault, each.at.document, each.at.file)];
  });
}

function currencies(files: readonly ParsedFile[]): readonly Problem[] {
  const first = files.find((each) => typeof currencyOf(each) === 'string');
  if (first === undefined) return [];
  const currency = String(currencyOf(first));
  return files.flatMap((each) => {
    const own = currencyOf(each);
    if (own === currency) return [];
    const found =
      own === undefined
        ? 'is missing'
        : `is ${quoted(own)}, and that of ${first.file} is ${quoted(currency)}`;
    const expected = `expected ${currency} in every file: prices in two currencies cannot be compared`;
    return [problemAt({ path: ['currency'], found, expected }, each.document, each.file)];
  });
}

function currencyOf({ document }: ParsedFile): unknown {
  const currency: unknown = isMap(document.value) ? document.value.currency : undefined;
  return currency === 'unknown' || currency === null ? undefined : currency;
}

function missingRotaries(files: readonly ParsedFile[]): readonly Problem[] {
  const ids = new Set(rowsOf(files, 'rotaries').map(({ row }) => row.id));
  return rowsOf(files, 'machines').flatMap(({ at, row, path }) => {
    const { kind, rotaryIncluded } = row;
    // with a machine of another kind it is wrong in itself
    if (kind !== 'convertible' || typeof rotaryIncluded !== 'string') return [];
    if (rotaryIncluded === 'none' || ids.has(rotaryIncluded)) return [];
    const found = `is ${quoted(rotaryIncluded)}, which no rotary of the catalog has as its id`;
    const fault = { path: [...path, 'rotaryIncluded'], found, expected: 'expected the id of a rotary' };
    return [problemAt(fault, at.document, at.file)];
  });
}
