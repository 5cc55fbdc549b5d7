import { isMap } from '../documents/fields/strict-map.ts';
import type { Path } from '../documents/place.ts';
import type { Problem } from '../documents/problem.ts';
import { type FaultAt, problemAt } from '../documents/problems-from-issues.ts';
import { formatQuantity } from '../quantities/format-quantity.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { List } from './catalog.ts';
import type { CatalogInFiles } from './read.ts';

/** Where a row stands, and how its numbers are said to whoever wrote it. */
export interface RowPlace {
  readonly units: LengthUnits;
  /** what is to be told of a value of the row, with file, line and column */
  readonly problem: (fault: FaultAt) => Problem;
  /** a value in its base unit as a reader of the file reads it; money in the currency of the catalog */
  readonly say: (value: number, unit: string) => string;
  /** e.g. `mills.yaml:12` */
  readonly at: string;
}

/** Finds where a row stands, by its list and id. */
export function rowPlaces({ catalog, files }: CatalogInFiles): (list: List, id: string) => RowPlace {
  const currency = catalog.currency === 'unknown' ? '' : catalog.currency;
  const places = new Map<string, RowPlace>();
  for (const { file, document } of files) {
    const units: LengthUnits = document.units.includes('inch') ? 'inch' : 'mm';
    const say: RowPlace['say'] = (value, unit) =>
      formatQuantity(value, unit, { shownIn: units, beside: true, first: 'inch', currency }).trim();
    for (const list of ['rotaries', 'machines'] as const) {
      const rows: unknown = isMap(document.value) ? document.value[list] : undefined;
      for (const [index, row] of (Array.isArray(rows) ? rows : []).entries()) {
        if (!isMap(row) || typeof row.id !== 'string') continue;
        const before: Path = [list, index];
        places.set(`${list} ${row.id.trim()}`, {
          units,
          say,
          at: `${file}:${document.placeOf(before).line}`,
          problem: (fault) => problemAt({ ...fault, path: [...before, ...fault.path] }, document, file),
        });
      }
    }
  }
  return (list, id) => {
    const place = places.get(`${list} ${id}`);
    if (place === undefined) throw new Error(`no file of the catalog holds ${list} ${id}`);
    return place;
  };
}
