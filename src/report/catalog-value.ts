import type { Decision } from '../rules/decision.ts';
import { data, enumerate, type Inline, number, say, words } from './blocks/inline.ts';
import { findAt, type Path } from './blocks/path.ts';
import { splitValuePath, valueUnit } from './value-words.ts';

/** A key of a catalog row with its places in lists: `pitches[1]`. */
const KEY = /^([\w-]+)((?:\[\d+\])*)$/;

/** Lists whose entries are values of their own: two of them are no range. */
const SEVERAL = /pitches$/;

/**
 * Where a catalog value stands in the decision, whether the row says it or not; null where the path names no row.
 * Example: `rotaries[wren].base.along` → ['inputs', 'catalog', 'rotaries', 0, 'base', 'along'].
 */
export function catalogPlace(decision: Decision, value: string): Path | null {
  const { list, name, key } = splitValuePath(value);
  if (list !== 'machines' && list !== 'rotaries') return null;
  const rows: readonly { readonly id: string }[] = decision.inputs.catalog[list];
  const row = rows.findIndex(({ id }) => id === name);
  if (row < 0) return null;
  const keys = key.split('.').flatMap((each): readonly (string | number)[] => {
    const [, own = each, places = ''] = KEY.exec(each) ?? [];
    return [own, ...[...places.matchAll(/\d+/g)].map(([digits]) => Number(digits))];
  });
  return ['inputs', 'catalog', list, row, ...keys];
}

/** What the catalog says of a value, as pieces of a sentence; 'not stated' where it says nothing. */
export function catalogValue(decision: Decision, value: string): readonly Inline[] {
  const { key } = splitValuePath(value);
  if (key === 'clearance.price') return clearancePrices(decision, value);
  const place = catalogPlace(decision, value);
  const found = place === null ? undefined : findAt(decision, place);
  if (place === null || found === undefined) return say`${words(absent(key))}`;
  return written(place, found, key, valueUnit(value));
}

const absent = (key: string): string => (key.startsWith('features.') ? 'not offered' : 'not stated');

function written(place: Path, found: unknown, key: string, unit: string): readonly Inline[] {
  if (found === 'unknown') return say`not stated`;
  if (found === null) return key === 'housing' ? say`not stated` : say`none`;
  if (typeof found === 'number') return [number(place, unit)];
  if (typeof found === 'boolean') return [words(found ? 'yes' : 'no')];
  if (typeof found === 'string') return [data(place)];
  if (!Array.isArray(found)) return say`stated`;
  if (found.some((each) => typeof each !== 'number')) return found.length === 0 ? say`none` : say`stated`;
  if (SEVERAL.test(key) || found.length !== 2) {
    return enumerate(found.map((_, index) => number([...place, index], unit)));
  }
  return [number(place, unit)];
}

/** Of each addition that the machine is offered with. */
function clearancePrices(decision: Decision, value: string): readonly Inline[] {
  const additions = catalogPlace(decision, value)?.slice(0, -1) ?? [];
  const found = findAt(decision, additions);
  if (!Array.isArray(found) || found.length === 0) return say`not offered`;
  return enumerate(found.map((_, index) => number([...additions, index, 'price'], 'money', NOT_STATED)));
}

const NOT_STATED = { ifNull: 'not stated' };
