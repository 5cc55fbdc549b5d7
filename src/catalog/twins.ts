import type { Problem } from '../documents/problem.ts';
import type { Machine, Rotary } from './catalog.ts';
import type { CatalogInFiles } from './read.ts';
import { rowPlaces } from './row-places.ts';
import { valuesByPath } from './row-values.ts';

/** With fewer values a row says too little to be the same as another one. */
const ENOUGH_VALUES = 8;

/**
 * Rows that are perhaps one: the same name under two ids, or the same values under two names. Each is told once, at the
 * later row, with the place of the first.
 */
export function twinsIn(read: CatalogInFiles): readonly Problem[] {
  const placeOf = rowPlaces(read);
  return (['rotaries', 'machines'] as const).flatMap((list) => {
    const rows: readonly (Rotary | Machine)[] = read.catalog[list];
    const named = new Map<string, string>();
    const valued = new Map<string, string>();
    return rows.flatMap((row) => {
      const values = knownValues(row);
      const content = JSON.stringify(values);
      const sameValues = values.length < ENOUGH_VALUES ? undefined : valued.get(content);
      const sameName = named.get(nameKey(row.name));
      if (sameValues === undefined) valued.set(content, row.id);
      if (sameName === undefined) named.set(nameKey(row.name), row.id);
      const tell = (path: readonly string[], what: string, first: string, expected: string) => {
        const found = `${what} ${list}[${first}] (${placeOf(list, first).at})`;
        return [placeOf(list, row.id).problem({ path, found, expected })];
      };
      if (sameValues !== undefined)
        return tell([], 'has the same values as', sameValues, 'expected one row for one thing to buy');
      if (sameName !== undefined)
        return tell(
          ['name'],
          'is also that of',
          sameName,
          'expected a name of its own: reports call rows by it',
        );
      return [];
    });
  });
}

const nameKey = (name: string): string => name.normalize('NFKC').trim().replace(/\s+/g, ' ').toLowerCase();

/** What a row states apart from what it is called and where it comes from, path by path. */
const knownValues = ({ id: _id, name: _name, from: _from, ...row }: Rotary | Machine): readonly string[] =>
  [...valuesByPath(row)].flatMap(([path, value]) =>
    value === 'unknown' || value === null ? [] : [`${path}=${value}`],
  );
