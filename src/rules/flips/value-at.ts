import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';

/** What a decision is made on. */
export interface Ground {
  readonly answers: Answers;
  readonly catalog: Catalog;
}

export type Keys = readonly (string | number)[];

/**
 * Where a value stands in answers or catalog, by the path that checks name it by. Null: it is no answer and no catalog
 * value, or not there. Example: `parts[Hinge].holding.height` → ['answers', 'parts', 0, 'holding', 'height'].
 */
export function keysOf(path: string, { answers, catalog }: Ground): Keys | null {
  const part = answers.parts.findIndex(({ name }) => path.startsWith(`parts[${name}].`));
  if (part >= 0)
    return ['answers', 'parts', part, ...split(path.slice(`parts[${answers.parts[part]?.name}].`.length))];
  for (const list of ['rotaries', 'machines'] as const) {
    const row = catalog[list].findIndex(({ id }) => path.startsWith(`${list}[${id}].`));
    if (row >= 0)
      return ['catalog', list, row, ...split(path.slice(`${list}[${catalog[list][row]?.id}].`.length))];
  }
  const [first = ''] = path.split(/[.[]/);
  return Object.hasOwn(answers, first) && first !== 'assume' && first !== 'parts'
    ? ['answers', ...split(path)]
    : null;
}

/** 'payload.tilted' → ['payload', 'tilted']; 'travel[1]' → ['travel', 1] */
const split = (path: string): Keys =>
  path.split('.').flatMap((piece): Keys => {
    const [name = '', ...indices] = piece.split('[');
    return [name, ...indices.map((each) => Number.parseInt(each, 10))];
  });

/** The number that stands there; null where none does. */
export function numberAt(ground: Ground, keys: Keys): number | null {
  let value: unknown = ground;
  for (const key of keys) {
    if (typeof value !== 'object' || value === null) return null;
    value = (value as Readonly<Record<string | number, unknown>>)[key];
  }
  return typeof value === 'number' ? value : null;
}

/** The same with another number there. */
export const withNumber = (ground: Ground, keys: Keys, number: number): Ground =>
  put(ground, keys, number) as Ground;

/** The same with any value of a range there. */
export const withRange = (ground: Ground, keys: Keys, range: readonly [low: number, high: number]): Ground =>
  put(ground, keys, range) as Ground;

function put(into: unknown, [key, ...rest]: Keys, value: number | readonly [number, number]): unknown {
  if (key === undefined) return value;
  if (Array.isArray(into)) return into.with(Number(key), put(into[Number(key)], rest, value));
  // a group of assumptions of which none is changed yet is not there
  const map = (into ?? {}) as Readonly<Record<string, unknown>>;
  return { ...map, [key]: put(map[key], rest, value) };
}
