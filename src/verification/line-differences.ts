import { diffArrays } from 'diff';
import type { Difference } from './json-differences.ts';

/**
 * Every line of a paper that is not as it comes out, by its number in the paper. Lines that were changed stand beside
 * each other; one that only stands in one of the two has nothing beside it.
 */
export function lineDifferences(says: string, comesOut: string): readonly Difference[] {
  const found: Difference[] = [];
  let line = 1;
  let gone: readonly string[] = [];
  const settle = (come: readonly string[]): void => {
    for (let at = 0; at < Math.max(gone.length, come.length); at += 1) {
      const [own, other] = [gone[at], come[at]];
      const where = `line ${line - gone.length + Math.min(at, gone.length)}`;
      found.push({ where, ...beside(own ?? null, other ?? null) });
    }
    gone = [];
  };
  for (const { added, removed, value } of diffArrays(linesOf(says), linesOf(comesOut))) {
    if (removed) {
      settle([]);
      gone = value;
      line += value.length;
    } else {
      settle(added ? value : []);
      if (!added) line += value.length;
    }
  }
  settle([]);
  return found;
}

const linesOf = (text: string): string[] => text.replaceAll('\r\n', '\n').trimEnd().split('\n');

const AROUND = 30;

/** Both lines, as far as they differ and a little around it. */
function beside(says: string | null, comesOut: string | null): Omit<Difference, 'where'> {
  if (says === null || comesOut === null) return { says: cut(says, 0), comesOut: cut(comesOut, 0) };
  let first = 0;
  while (says[first] !== undefined && says[first] === comesOut[first]) first += 1;
  const from = Math.max(0, first - AROUND);
  return { says: cut(says, from), comesOut: cut(comesOut, from) };
}

function cut(line: string | null, from: number): string | null {
  if (line === null) return null;
  const to = from + 2 * AROUND;
  return `${from > 0 ? '…' : ''}${line.slice(from, to)}${to < line.length ? '…' : ''}`;
}
