import { nearest } from '../../documents/nearest.ts';
import { quoted } from '../../documents/printable.ts';
import type { QuantityKind } from '../../quantities/kinds.ts';
import { UNITS, unitNamed } from '../../quantities/units.ts';
import { QUESTIONS } from '../index.ts';
import type { Question } from '../question.ts';

/** What a column answers. Width and height stand beside the length of a block: the three are its size. */
export type Column = Question | 'width' | 'height';

export type HeadingReading =
  /** `unit`: of its numbers that have none; null: none is named */
  | { readonly ok: true; readonly column: Column; readonly unit: string | null }
  /** one sentence on what is wrong with it */
  | { readonly ok: false; readonly why: string };

const OF_A_PART = QUESTIONS.filter(({ of }) => of === 'part');

/** Words of a title, without signs. Example: 'Depth (from the top)' → 'depth from the top'. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

const NAME_TOO = ['part', 'part name'];
const COLUMNS: ReadonlyMap<string, Column> = new Map<string, Column>([
  ...OF_A_PART.filter(({ id }) => id === 'name').flatMap((name) =>
    NAME_TOO.map((words): [string, Column] => [words, name]),
  ),
  ...OF_A_PART.flatMap((question): [string, Column][] => [
    [plain(question.id), question],
    [plain(question.title), question],
  ]),
  ['width', 'width'],
  ['height', 'height'],
]);

const TITLES: ReadonlyMap<string, string> = new Map([
  ...OF_A_PART.map(({ title }) => [plain(title), title] as const),
  ['width', 'Width'],
  ['height', 'Height'],
]);

/** The kind of its numbers; null where they are none. */
function kindOf(column: Column): QuantityKind | null {
  if (typeof column === 'string') return 'length';
  const { field } = column;
  return field.kind === 'quantity' || field.kind === 'quantities' ? field.of : null;
}

/**
 * The question about a part that a heading names by its title, upper and lower case and signs aside, with the unit of
 * its numbers in brackets or behind it. Example: readHeading('LENGTH (mm)') → the question for the length, 'mm'.
 */
export function readHeading(heading: string): HeadingReading {
  const [, title = heading, inside = null] = /^(.*?)[([{](.*?)[)\]}]?\s*$/s.exec(heading) ?? [];
  const named = COLUMNS.get(plain(title)) ?? COLUMNS.get(plain(heading));
  if (named !== undefined) return withUnit(named, inside);
  const [, words = '', unit = ''] = /^(.*?)[\s,/]+(\S+)$/s.exec(heading.trim()) ?? [];
  const before = COLUMNS.get(plain(words));
  const kind = before === undefined ? null : kindOf(before);
  if (before !== undefined && kind !== null && unitNamed(kind, unit) !== undefined) {
    return withUnit(before, unit);
  }
  const near = nearest(plain(title), [...TITLES.keys()]);
  const hint = near === undefined ? '' : ` (did you mean "${TITLES.get(near)}"?)`;
  return {
    ok: false,
    why: `No question about a part is called that${hint}: the column is left out.`,
  };
}

/** A unit that nobody knows would make every number of the column another one: it is not read at all. */
function withUnit(column: Column, brackets: string | null): HeadingReading {
  const kind = kindOf(column);
  const inside = brackets?.replace(/±/g, '').trim() ?? '';
  if (kind === null || inside === '') return { ok: true, column, unit: null };
  const unit = unitNamed(kind, inside) ?? unitNamed(kind, inside.split(/[\s,;]+/).at(-1) ?? '');
  if (unit !== undefined) return { ok: true, column, unit: unit.symbol };
  const known = UNITS[kind].slice(0, 5).map(({ symbol }) => symbol);
  if (known.every((symbol) => symbol === '')) return { ok: true, column, unit: null };
  return {
    ok: false,
    why: `${quoted(inside)} is no unit of it: the column is left out. Write ${known.join(', ')} in the brackets.`,
  };
}
