import { isMap } from '../documents/fields/strict-map.ts';
import type { FaultAt } from '../documents/problems-from-issues.ts';

/**
 * What no single value of an answers file shows: doubled names, a size that the shape does not have. Looks at the
 * file as it stands, so that it finds everything whatever else is wrong.
 */
export function crossChecked(raw: unknown): readonly FaultAt[] {
  const parts: unknown = isMap(raw) ? raw.parts : undefined;
  if (!Array.isArray(parts)) return [];
  return [...doubledNames(parts), ...parts.flatMap((part: unknown, index) => shapeFaults(part, index))];
}

function doubledNames(parts: readonly unknown[]): readonly FaultAt[] {
  const seen = new Map<string, string>();
  return parts.flatMap((part, index): readonly FaultAt[] => {
    const name = isMap(part) && typeof part.name === 'string' ? part.name.trim() : '';
    const key = name.normalize('NFKC').toLowerCase();
    const before = seen.get(key);
    if (name === '') return [];
    if (before === undefined) {
      seen.set(key, name);
      return [];
    }
    const found =
      before === name ? 'is the name of another part too' : `differs from "${before}" in capitals only`;
    return [{ path: ['parts', index, 'name'], found, expected: 'expected a name of its own for each part' }];
  });
}

/** What belongs to the other shape. */
const FOREIGN: Readonly<Record<string, readonly string[]>> = {
  block: ['diameter', 'length'],
  round: ['size'],
};
const OWN: Readonly<Record<string, string>> = {
  block: 'size: [length, width, height]',
  round: 'diameter and length',
};

function shapeFaults(part: unknown, index: number): readonly FaultAt[] {
  if (!isMap(part) || typeof part.shape !== 'string') return [];
  const shape = part.shape;
  const foreign = Object.hasOwn(FOREIGN, shape) ? (FOREIGN[shape] ?? []) : [];
  const faults = foreign
    .filter((key) => Object.hasOwn(part, key) && part[key] !== null && part[key] !== 'unknown')
    .map((key): FaultAt => {
      const path = ['parts', index, key];
      return { path, atKey: true, found: `is given for a ${shape} part`, expected: `expected ${OWN[shape]}` };
    });
  if (shape === 'block' && part.stands === 'lying') {
    const found = 'is lying for a block';
    const expected = 'expected the sizes as it stands, the height last; only a round part can be lying';
    faults.push({ path: ['parts', index, 'stands'], found, expected });
  }
  return faults;
}
