import { valueAt } from '../../documents/path-text.ts';
import type { Path } from '../../documents/place.ts';
import type { Decision } from '../../rules/decision.ts';

/** Where a value stands in the decision, and in its JSON: keys and places in lists, from the top. */
export type { Path };

/**
 * The value at a path. Throws RangeError where there is none: a report that names a value which does not
 * exist is a fault of the report. Example: lookUp(decision, ['stages', 0, 'before']) → 84.
 */
export function lookUp(decision: Decision, path: Path): unknown {
  const value = findAt(decision, path);
  if (value === undefined) throw new RangeError(`the decision has no ${placeText(path)}`);
  return value;
}

/** The value at a path; undefined where there is none. */
export const findAt = (decision: Decision, path: Path): unknown => valueAt(decision, path);

/** A path as it stands in the file. Example: placeText(['stages', 0, 'before']) → 'stages[0].before'. */
export function placeText(path: Path): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'string' && /^[A-Za-z]\w*$/.test(key)) text += text === '' ? key : `.${key}`;
    else text += `[${key}]`;
  }
  return text;
}
