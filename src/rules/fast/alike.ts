import type { Case, PartCase } from '../judging/case.ts';
import { freshMemo, type Keys } from '../judging/memo.ts';

/** Gives the case of a ground with a part on it (null: with none); what is read of the ground is noted. */
export type NotedCase = (part: PartCase | null) => Case;

/** What was made, or what has to be looked at next to know which of those serves. */
type Known<Found> =
  | { readonly found: Found }
  | { readonly path: Path; readonly by: Map<unknown, Known<Found>> };

type Path = readonly PropertyKey[];
type Noted = { readonly path: Path; readonly value: unknown };

/**
 * Makes something of a ground, once for all grounds that are alike in what is read of them for it: the terms of a side are
 * the same for all rotaries that have as many axes and lie the same way. Throws what is barred where that is read.
 */
export function alike<Found>(make: (of: NotedCase) => Found): (ground: Case) => Found {
  let known: Known<Found> | null = null;
  return (ground) => {
    let at = known;
    while (at !== null && 'by' in at) at = at.by.get(valueAt(ground, at.path)) ?? null;
    if (at !== null) return at.found;
    const noted: Noted[] = [];
    const made = notedWhile(ground, noted, make);
    known = kept(known, noted, made);
    return made;
  };
}

function kept<Found>(known: Known<Found> | null, noted: readonly Noted[], found: Found): Known<Found> {
  const [first, ...others] = noted;
  if (first === undefined) return { found };
  const at = known !== null && 'by' in known ? known : { path: first.path, by: new Map() };
  at.by.set(first.value, kept(at.by.get(first.value) ?? null, others, found));
  return at;
}

/** Of a list or a record only that it is there; what is in it is looked at by itself. */
const THERE = Symbol('there');

const simply = (value: unknown): unknown => (typeof value === 'object' && value !== null ? THERE : value);

function valueAt(ground: Case, path: Path): unknown {
  let value: unknown = ground;
  for (const key of path) value = (value as Record<PropertyKey, unknown>)[key];
  return simply(value);
}

function notedWhile<Found>(ground: Case, noted: Noted[], make: (of: NotedCase) => Found): Found {
  const seen = new Set<string>();
  let over = false;
  const watched = (target: object, path: Path, given: Readonly<Record<PropertyKey, unknown>>): object =>
    // a stand-in, so that what is frozen can be watched too
    new Proxy(Array.isArray(target) ? [] : {}, {
      has: (_, key) => Array.isArray(target) && key in target,
      get(_, key, self) {
        if (key in given) return given[key as string];
        const value: unknown = Reflect.get(target, key, Array.isArray(target) ? self : target);
        if (typeof value === 'function' || typeof key === 'symbol') return value;
        if (over) throw new Error(`${[...path, key].map(String).join('.')} is read too late`);
        const there = [...path, key];
        const name = there.map(String).join('.');
        if (!seen.has(name)) noted.push({ path: there, value: simply(value) });
        seen.add(name);
        return typeof value === 'object' && value !== null ? watched(value, there, {}) : value;
      },
      ownKeys: () => {
        throw new Error(`all of ${path.map(String).join('.')} is read`);
      },
    });
  const made = make(
    (part) => watched(ground, [], { part, shop: ground.shop, memo: NO_MEMO, keys: NO_KEYS }) as Case,
  );
  over = true;
  return made;
}

/** Nothing is kept while it is noted what is read: what was kept would not be read. */
const NO_MEMO = freshMemo();
const NO_KEYS = new Proxy({} as Keys, { get: () => Number.NaN });
