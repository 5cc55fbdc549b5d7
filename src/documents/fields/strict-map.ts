import * as z from 'zod';
import { type JsonForm, withJsonForm } from './json-form.ts';

/**
 * A map with these keys and no others. What is left empty (`ceiling:` and nothing behind it) counts as left out,
 * unless the key is one of `noneIsSaid`, where an empty value says that there is none.
 */
export function strictMap<Shape extends z.core.$ZodShape>(
  shape: Shape,
  { means, noneIsSaid = [] }: { readonly means: string; readonly noneIsSaid?: readonly (keyof Shape)[] },
) {
  const keys = Object.keys(shape);
  const kept = new Set<string>(noneIsSaid.map(String));
  const withoutEmpty = (raw: unknown): unknown => {
    if (!isMap(raw)) return raw;
    const left = Object.entries(raw).filter(([key, value]) => {
      return value !== null || kept.has(key) || !Object.hasOwn(shape, key);
    });
    return Object.fromEntries(left);
  };
  const map = z.strictObject(shape, {
    // the keys that there are: problems-from-issues.ts looks for the nearest
    error: (issue) => (issue.code === 'unrecognized_keys' ? keys.join(', ') : undefined),
  });
  return withJsonForm(z.preprocess(withoutEmpty, map), (): JsonForm => ({ description: means }));
}

/** The same that may be left out, left empty or `unknown`: then each of its keys is left out. */
export function optionalMap<Shape extends z.core.$ZodShape>(
  shape: Shape,
  options: { readonly means: string; readonly noneIsSaid?: readonly (keyof Shape)[] },
) {
  const unknownIsEmpty = (raw: unknown): unknown => (raw === 'unknown' || raw === null ? {} : raw);
  const map = z.preprocess(unknownIsEmpty, strictMap(shape, options));
  return map.prefault({});
}

export const isMap = (raw: unknown): raw is Readonly<Record<string, unknown>> =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);
