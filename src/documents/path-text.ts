import { isMap } from './fields/strict-map.ts';
import type { Path } from './place.ts';

/**
 * A path as people read it: entries of a list by their name or id where they have one.
 * Example: parts → 0 → shape, the part being named Hinge → 'parts[Hinge].shape'.
 */
export function pathText(value: unknown, path: Path): string {
  let text = '';
  let current = value;
  for (const step of path) {
    const list = Array.isArray(current);
    current = stepInto(current, step);
    if (list) text += `[${nameOf(current) ?? step}]`;
    else text += text === '' ? step : `.${step}`;
  }
  return text;
}

function stepInto(value: unknown, step: string | number): unknown {
  if (Array.isArray(value)) return value[Number(step)];
  return isMap(value) && Object.hasOwn(value, step) ? value[step] : undefined;
}

function nameOf(value: unknown): string | undefined {
  if (!isMap(value)) return undefined;
  const name = Object.hasOwn(value, 'id') ? value.id : Object.hasOwn(value, 'name') ? value.name : undefined;
  return typeof name === 'string' && name.trim() !== '' ? name.slice(0, 60) : undefined;
}

/** The value at a path; undefined where it leads to nothing. */
export const valueAt = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((current, step) => stepInto(current, step), value);
