import type { Catalog, List, Machine, Rotary } from '../catalog/catalog.ts';
import { csvText } from '../documents/csv-text.ts';
import { isMap } from '../documents/fields/strict-map.ts';
import { BASE_UNITS } from '../quantities/kinds.ts';
import { type ImportField, kindOf } from './fields/import-field.ts';
import { FIELDS } from './fields/index.ts';

/**
 * The rows of a list as a table in CSV: keys of the catalog as headings, with units, so that importing it gives the same
 * rows. What is not known is an empty cell; columns in which nothing stands are left out. null: the list has no rows.
 */
export function catalogTable(catalog: Catalog, list: List): string | null {
  const rows: readonly (Rotary | Machine)[] = catalog[list];
  if (rows.length === 0) return null;
  const columns = FIELDS[list].filter(
    ({ path, cell }) => cell.form !== 'several' && !isEndOfRange(path, list),
  );
  const filled = columns
    .map((field) => ({ field, cells: rows.map((row) => cellOf(row, field)) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  const headings = filled.map(({ field }) => headingOf(field, catalog.currency));
  return csvText([headings, ...rows.map((_, at) => filled.map(({ cells }) => cells[at] ?? ''))]);
}

/** Whether it stands in one cell with the other end. Example: ('tilt[0]', 'rotaries') → true. */
const isEndOfRange = (path: string, list: List): boolean =>
  FIELDS[list].some(
    (field) => field.cell.form === 'range' && [`${field.path}[0]`, `${field.path}[1]`].includes(path),
  );

function headingOf(field: ImportField, currency: string): string {
  const kind = kindOf(field);
  const unit =
    kind === null ? '' : kind === 'money' ? (currency === 'unknown' ? '' : currency) : BASE_UNITS[kind];
  return unit === '' ? field.path : `${field.path} (${unit})`;
}

function cellOf(row: Rotary | Machine, { path, cell }: ImportField): string {
  if (path === 'maker') return row.from.maker === 'unknown' ? '' : row.from.maker;
  const value = valueAt(row, path.replace(/\[(\d+)\]/g, '.$1').split('.'));
  if (value === 'unknown') return '';
  switch (cell.form) {
    case 'mounting':
      return 'hold' in row && row.hold === 'unknown' ? '' : value === undefined ? 'none' : 'yes';
    case 'feature':
      return value === undefined ? 'none' : String(value);
    case 'flag':
      return value === undefined ? '' : value === true ? 'yes' : 'no';
    case 'range':
      return Array.isArray(value) ? ends(value) : noneOr(value, cell.orNone);
    case 'quantities':
      return Array.isArray(value) ? value.join(' / ') : '';
    case 'boxes':
      return listOf(
        value,
        ({ along, across, top }) => `along ${ends(along)}, across ${ends(across)}, top ${top}`,
      );
    case 'additions':
      return listOf(value, ({ kind, adds, price, height }) => {
        const amount = price === 'unknown' ? '' : `, price ${price}`;
        return `${kind} adds ${adds}${amount}, height ${height}`;
      });
    case 'quantity':
      return noneOr(value, cell.orNone);
    case 'text':
    case 'choice':
    case 'several':
      return noneOr(value, false);
  }
}

const ends = (value: unknown): string => (Array.isArray(value) ? value.join(' … ') : '');

const listOf = (value: unknown, words: (map: Readonly<Record<string, unknown>>) => string): string =>
  Array.isArray(value) ? value.filter(isMap).map(words).join('; ') : '';

const noneOr = (value: unknown, orNone = false): string =>
  value === null ? (orNone ? 'none' : '') : value === undefined ? '' : String(value);

/** undefined: there is nothing at the path. */
function valueAt(value: unknown, [first, ...others]: readonly string[]): unknown {
  if (first === undefined) return value;
  if (value === 'unknown') return value;
  if (typeof value !== 'object' || value === null) return undefined;
  return valueAt((value as Readonly<Record<string, unknown>>)[first], others);
}
