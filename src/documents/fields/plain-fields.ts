import type * as z from 'zod';
import { nearest } from '../nearest.ts';
import { quoted } from '../printable.ts';
import { accepted, type Read, refused } from './fault.ts';
import { absentField, optionalField, requiredField } from './field.ts';
import type { JsonForm } from './json-form.ts';

/** One of a few words. Left out: `missing`. */
export function choiceField<const Word extends string, Missing extends string = 'unknown'>(
  words: readonly Word[],
  means: string,
  missing: Missing,
): z.ZodType<Word | Missing> {
  const all: readonly (Word | Missing)[] = [...words, missing];
  return optionalField<Word | Missing>(
    missing,
    { description: means, type: 'string', enum: [...new Set(all)] },
    (raw) => readChoice(raw, all),
  );
}

/** One of a few words that has to be there. */
export const requiredChoiceField = <const Word extends string>(
  words: readonly Word[],
  means: string,
): z.ZodType<Word> =>
  requiredField({ description: means, type: 'string', enum: words }, (raw) => readChoice(raw, words));

/** One of a few words that may be left out, and then is not there. */
export const absentChoiceField = <const Word extends string>(
  words: readonly Word[],
  means: string,
): z.ZodType<Word | undefined> =>
  absentField({ description: means, type: 'string', enum: words }, (raw) => readChoice(raw, words));

/** One of a few words; says which, and which one was near. */
function readChoice<Word extends string>(raw: unknown, words: readonly Word[]): Read<Word> {
  const found = words.find((word) => word === raw);
  if (found !== undefined) return accepted(found);
  return refused({
    found: `is ${quoted(raw)}`,
    expected: `expected ${wordsListed(words)}`,
    didYouMean: typeof raw === 'string' ? nearest(raw, words) : undefined,
  });
}

/** true or false, or `unknown` where that is what left out means. */
export function flagField<Missing extends boolean | 'unknown'>(
  means: string,
  missing: Missing,
): z.ZodType<boolean | Missing> {
  const type = missing === 'unknown' ? { enum: [true, false, 'unknown'] } : { type: 'boolean' };
  const expected = missing === 'unknown' ? 'expected true, false or unknown' : 'expected true or false';
  return optionalField<boolean | Missing>(missing, { description: means, ...type }, (raw) => {
    if (typeof raw === 'boolean') return accepted(raw);
    if (raw === missing) return accepted(missing);
    return refused({ found: `is ${quoted(raw)}`, expected, didYouMean: booleanMeant(raw) });
  });
}

function booleanMeant(raw: unknown): string | undefined {
  if (typeof raw !== 'string') return undefined;
  if (['yes', 'y', 'on'].includes(raw.toLowerCase())) return 'true';
  return ['no', 'n', 'off'].includes(raw.toLowerCase())
    ? 'false'
    : nearest(raw, ['true', 'false', 'unknown']);
}

export interface TextOf {
  readonly means: string;
  /** what fits, and how that is said */
  readonly fits?: RegExp;
  readonly expected?: string;
  readonly longest: number;
}

/** A text that has to be there: not empty, on one line. */
export const textField = (of: TextOf): z.ZodType<string> =>
  requiredField(textForm(of), (raw) => readText(raw, of));

/** A text that may be left out. */
export const optionalTextField = <Missing extends string | null>(
  of: TextOf,
  missing: Missing,
): z.ZodType<string | Missing> =>
  optionalField<string | Missing>(missing, optionalTextForm(of, missing), (raw) => readText(raw, of));

const textForm = ({ means, longest, fits }: TextOf) => ({
  description: means,
  type: 'string',
  minLength: 1,
  maxLength: longest,
  ...(fits === undefined ? {} : { pattern: fits.source }),
});

function optionalTextForm(of: TextOf, missing: string | null): JsonForm {
  const { description, ...form } = textForm(of);
  return { description, anyOf: [form, { const: missing }] };
}

function readText(raw: unknown, { fits, expected, longest, means }: TextOf): Read<string> {
  if (typeof raw !== 'string') {
    const quotes = typeof raw === 'number' || typeof raw === 'boolean' ? ', in quotes' : '';
    return refused({ found: `is ${quoted(raw)}`, expected: `expected a text${quotes}: ${means}` });
  }
  const text = raw.trim();
  if (text === '') return refused({ found: 'is an empty text', expected: `expected ${means}` });
  if (text.length > longest) {
    return refused({ found: `has ${text.length} characters`, expected: `expected at most ${longest}` });
  }
  if (/[\p{Cc}\u2028\u2029]/u.test(text)) {
    return refused({
      found: `is ${quoted(text)}`,
      expected: 'expected a text on one line without control characters',
    });
  }
  if (fits !== undefined && !fits.test(text)) {
    return refused({ found: `is ${quoted(text)}`, expected: `expected ${expected ?? means}` });
  }
  return accepted(text);
}

/** `a, b or c` */
function wordsListed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}
