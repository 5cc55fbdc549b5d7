import type { Decision } from '../../rules/decision.ts';
import type { Cell } from '../blocks/block.ts';
import { data, number, words } from '../blocks/inline.ts';
import { findAt, type Path } from '../blocks/path.ts';
import { UNASKED_ANSWER_WORDS } from '../wording/answers.ts';

/** Rows for what stood in the answers file without being asked in the interview, where anything is known. */
export function unaskedRows(decision: Decision): readonly (readonly Cell[])[] {
  return Object.entries(UNASKED_ANSWER_WORDS).flatMap(
    ([key, { words: title, unit }]): readonly (readonly Cell[])[] => {
      if (key.startsWith('parts.')) return [];
      const path: Path = ['inputs', 'answers', ...key.split(/[.[\]]/).flatMap(segment)];
      const value = findAt(decision, path);
      if (typeof value === 'number' || isRange(value)) return [[[words(title)], [number(path, unit)], []]];
      if (typeof value === 'string' && value !== 'unknown') return [[[words(title)], [data(path)], []]];
      return [];
    },
  );
}

const segment = (text: string): readonly (string | number)[] =>
  text === '' ? [] : [/^\d+$/.test(text) ? Number(text) : text];

const isRange = (value: unknown): boolean =>
  Array.isArray(value) && value.length === 2 && value.every((end) => typeof end === 'number');
