import type { Decision } from '../../rules/decision.ts';

/** Where a value stands in the decision, and in its JSON: keys and places in lists, from the top. */
export type Path = readonly (string | number)[];

/**
 * The value at a path. Throws RangeError where there is none: a report that names a value which does not
 * exist is a fault of the report. Example: lookUp(decision, ['stages', 0, 'before']) → 84.
 */
export function lookUp(decision: Decision, path: Path): unknown {
  const value = findAt(decision, path);
  if (value === undefined) throw new RangeError(`the decision has no ${pathText(path)}`);
  return value;
}

/** The value at a path; undefined where there is none. */
export function findAt(decision: Decision, path: Path): unknown {
  let value: unknown = decision;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<string | number, unknown>)[key];
  }
  return value;
}

/** A path as it is written. Example: pathText(['stages', 0, 'before']) → 'stages[0].before'. */
export function pathText(path: Path): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += `[${key}]`;
    else if (!/^[A-Za-z]\w*$/.test(key)) text += `[${key}]`;
    else text += text === '' ? key : `.${key}`;
  }
  return text;
}
