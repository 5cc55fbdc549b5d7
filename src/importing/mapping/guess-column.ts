import type { List } from '../../catalog/catalog.ts';
import { nearest } from '../../documents/nearest.ts';
import type { QuantityKind } from '../../quantities/kinds.ts';
import { UNITS, unitNamed } from '../../quantities/units.ts';
import { type ImportField, kindOf } from '../fields/import-field.ts';
import { FIELDS } from '../fields/index.ts';
import { headingWords, tellingWords, wordsKey } from './heading-words.ts';

/** What a heading says. Only what is sure is taken; what is likely is a suggestion for whoever writes the map. */
export interface ColumnGuess {
  readonly sure: ImportField | null;
  /** paths, the most likely first */
  readonly likely: readonly string[];
  /** symbol of the unit that the heading names; null: none */
  readonly unit: string | null;
  /** of prices, where the heading names it */
  readonly currency: string | null;
}

/**
 * What a column is, by its heading: words of the trade in any order, the unit in brackets or behind them.
 * Example: guessColumn('machines', 'X travel (in)') → sure: travel[0], unit: 'in'.
 */
export function guessColumn(list: List, heading: string): ColumnGuess {
  const sure = sureColumn(list, heading);
  if (sure !== null) return sure;
  const likely = new Set<string>();
  for (const { words, unit } of readingsOf(heading)) {
    for (const field of [...exact(list, words), ...near(list, words)])
      if (fits(field, unit)) likely.add(field.path);
  }
  const inside = bracketsOf(heading);
  const unit = inside === null ? null : (anyUnit(inside)?.symbol ?? null);
  return { sure: null, likely: [...likely].slice(0, 3), unit, currency: null };
}

/** The same where it is sure, else null: quick enough for every cell of a table that may be a heading. */
export function sureColumn(
  list: List,
  heading: string,
): (ColumnGuess & { readonly sure: ImportField }) | null {
  for (const { words, unit } of readingsOf(heading)) {
    const found = exact(list, words).filter((field) => fits(field, unit));
    const [first] = found;
    if (first !== undefined && found.length === 1)
      return { sure: first, likely: [], ...namedUnit(first, unit) };
  }
  return null;
}

const fits = (field: ImportField, unit: string | null): boolean =>
  unit === null || unitOf(field, unit) !== null;

interface Reading {
  readonly words: readonly string[];
  /** as it is written; null: there is none */
  readonly unit: string | null;
}

const BRACKETS = /^(.*?)[([{]([^)\]}]*)[)\]}]?\s*$/s;

const bracketsOf = (heading: string): string | null =>
  BRACKETS.exec(heading.slice(0, 200))?.[2]?.trim() ?? null;

/** Every way to tell words and unit apart; what is in brackets may be either. */
function readingsOf(heading: string): readonly Reading[] {
  const text = heading.slice(0, 200).trim();
  const [, title, inside] = BRACKETS.exec(text) ?? [];
  const readings: Reading[] = [];
  if (title !== undefined && inside !== undefined) {
    const unit = inside.replace(/±/g, '').trim();
    if (unit !== '') readings.push({ words: headingWords(title), unit });
    const [, first = '', last = ''] = /^(.*?)[\s,;]+(\S+)$/s.exec(unit) ?? [];
    if (last !== '') readings.push({ words: headingWords(`${title} ${first}`), unit: last });
  }
  readings.push({ words: headingWords(text), unit: null });
  const [, words = '', last = ''] = /^(.*?)[\s,/:]+(\S+)$/s.exec(text) ?? [];
  if (last !== '') readings.push({ words: headingWords(words), unit: last });
  return readings;
}

const CURRENCY_SIGNS: Readonly<Record<string, string>> = { '€': 'EUR', '£': 'GBP' };

/** The unit as it is called, or the currency; null where it is none of this field. */
function unitOf(field: ImportField, text: string): { unit: string | null; currency: string | null } | null {
  const kind = kindOf(field);
  if (kind === null) return null;
  if (kind === 'money') {
    const currency = CURRENCY_SIGNS[text] ?? (/^[A-Z]{3}$/.test(text) ? text : null);
    return currency === null ? null : { unit: null, currency };
  }
  const unit = unitNamed(kind, text);
  return unit === undefined ? null : { unit: unit.symbol, currency: null };
}

const namedUnit = (field: ImportField, text: string | null) =>
  (text === null ? null : unitOf(field, text)) ?? { unit: null, currency: null };

const anyUnit = (text: string) =>
  (Object.keys(UNITS) as QuantityKind[])
    .map((kind) => unitNamed(kind, text))
    .find((unit) => unit !== undefined);

interface Lexicon {
  readonly full: ReadonlyMap<string, readonly ImportField[]>;
  readonly telling: ReadonlyMap<string, readonly ImportField[]>;
  readonly phrases: readonly { readonly words: readonly string[]; readonly field: ImportField }[];
}

const lexicon = (list: List): Lexicon => {
  const phrases = FIELDS[list].flatMap((field) =>
    [...field.words, pathWords(field.path)].map((words) => {
      return { words: headingWords(words), field, doubtful: words.startsWith('?') };
    }),
  );
  const by = (key: (words: readonly string[]) => string) => {
    const map = new Map<string, ImportField[]>();
    for (const { words, field } of phrases.filter(({ doubtful }) => !doubtful)) {
      const fields = map.get(key(words)) ?? [];
      if (!fields.includes(field)) map.set(key(words), [...fields, field]);
    }
    return map;
  };
  return { phrases, full: by(wordsKey), telling: by((words) => wordsKey(tellingWords(words))) };
};

/** A key of the catalog is a heading too, as `catalog` files spell it. Example: 'payload.level' → 'payload level'. */
const pathWords = (path: string): string => path.replace(/[^A-Za-z0-9]+/g, ' ');

const LEXICA: Readonly<Record<List, Lexicon>> = {
  rotaries: lexicon('rotaries'),
  machines: lexicon('machines'),
};

function exact(list: List, words: readonly string[]): readonly ImportField[] {
  const { full, telling } = LEXICA[list];
  return full.get(wordsKey(words)) ?? telling.get(wordsKey(tellingWords(words))) ?? [];
}

/** Fields with two words of the trade and one more, or that are nearly spelled so. */
function near(list: List, words: readonly string[]): readonly ImportField[] {
  const { phrases } = LEXICA[list];
  const within = phrases.filter(
    (phrase) =>
      words.length > 0 &&
      phrase.words.every((word) => words.includes(word)) &&
      words.length - phrase.words.length <= 2,
  );
  const text = words.join(' ');
  const spelled = nearest(
    text,
    phrases.map((phrase) => phrase.words.join(' ')),
  );
  const similar = phrases.filter((phrase) => phrase.words.join(' ') === spelled);
  const most = within.toSorted((one, other) => other.words.length - one.words.length);
  const longer = phrases.filter(
    (phrase) => words.length > 1 && words.every((word) => phrase.words.includes(word)),
  );
  return [...most, ...similar, ...longer].map(({ field }) => field);
}
