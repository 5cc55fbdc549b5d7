import { describeFault } from '../quantities/describe-fault.ts';
import type { QuantityFault } from '../quantities/faults.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { plainCharacters } from '../quantities/parse-number.ts';
import { parseQuantity } from '../quantities/parse-quantity.ts';
import { looksLikeRange, parseRange } from '../quantities/parse-range.ts';
import type { Uncertain } from './answers.ts';
import { matchOption } from './match-option.ts';
import type { Field, Offer, Option, Value } from './question.ts';
import { splitNumbers } from './split-numbers.ts';

export type ReplyReading =
  | { readonly ok: true; readonly value: Value }
  /** one sentence that names what is accepted */
  | { readonly ok: false; readonly why: string };

export interface ReplyContext {
  readonly units: LengthUnits;
  readonly offer: Offer;
  /** it stands in a cell of a table: no options are shown beside it */
  readonly inCell?: true;
}

const NOT_SURE_WORDS =
  /^(not (really )?sure|notsure|unsure|unknown|not known|(i )?(do not|don't|dont) know( yet)?|dunno|no (idea|clue))$/;

/** Whether a text says that the answer is not known. Example: isNotSure('Not sure.') → true. */
export const isNotSure = (text: string): boolean =>
  NOT_SURE_WORDS.test(
    text
      .trim()
      .toLowerCase()
      .replace(/[.!]+$/, '')
      .replace(/[’‘]/g, "'")
      .replace(/\s+/g, ' '),
  );

/**
 * What a typed reply says, as a value of the question's field; otherwise a sentence on what is accepted.
 * Example: a length in inches, '3 1/2' → 88.9.
 */
export function readReply(field: Field, text: string, context: ReplyContext): ReplyReading {
  switch (field.kind) {
    case 'text':
      return readText(text, field.longest);
    case 'yes-no':
      return readYesNo(text);
    case 'choice':
      return matchOption(field.options(context.offer), text, context.inCell);
    case 'list':
      return readSeveral(field.options(context.offer), text, context.inCell, field.alone);
    case 'order': {
      const options = field.options(context.offer);
      const named = readSeveral(options, text);
      if (!named.ok) return named;
      const rest = options.map((option) => option.value).filter((value) => !named.value.includes(value));
      return { ok: true, value: [...named.value, ...rest] };
    }
    case 'quantity':
      return readUncertain(text, field, context);
    case 'quantities':
      return readQuantities(text, field, context);
  }
}

function readText(text: string, longest: number): ReplyReading {
  const plain = text
    .trim()
    .replace(/^"(.*)"$/, '$1')
    .trim();
  if (plain === '')
    return {
      ok: false,
      why: 'Nothing is written: type a few words, or "not sure".',
    };
  if ([...plain].length > longest) {
    return {
      ok: false,
      why: `That is longer than ${longest} characters: type a shorter one, or "not sure".`,
    };
  }
  return { ok: true, value: plain };
}

function readYesNo(text: string): ReplyReading {
  const word = text.trim().toLowerCase();
  if (['y', 'yes', '1', 'true'].includes(word)) return { ok: true, value: true };
  if (['n', 'no', '2', 'false'].includes(word)) return { ok: true, value: false };
  return {
    ok: false,
    why: `"${text.trim()}" is neither: type yes, no, or "not sure".`,
  };
}

/** Each option once, in the order in which they were named. */
function readSeveral(
  options: readonly Option[],
  text: string,
  inCell = false,
  alone?: string,
): { readonly ok: true; readonly value: readonly string[] } | { readonly ok: false; readonly why: string } {
  const words = text.split(/[\s,;+&]+|\band\b/i).filter((word) => word !== '');
  const chosen: string[] = [];
  for (const word of words) {
    const match = matchOption(options, word, inCell);
    if (!match.ok) return match;
    if (!chosen.includes(match.value)) chosen.push(match.value);
  }
  if (alone !== undefined && chosen.length > 1 && chosen.includes(alone)) {
    return { ok: false, why: `"${alone}" stands alone: type it, or the others without it, or "not sure".` };
  }
  if (chosen.length > 0) return { ok: true, value: chosen };
  return {
    ok: false,
    why: 'Nothing is named: type numbers or words with commas, such as "1, 3", or "not sure".',
  };
}

type QuantityField = Extract<Field, { kind: 'quantity' | 'quantities' }>;
type UncertainReading =
  | { readonly ok: true; readonly value: Uncertain }
  | { readonly ok: false; readonly why: string };

/** A number, or two ends of a range: a range of one value is that value. */
function readUncertain(
  text: string,
  { of, limits }: QuantityField,
  { units }: ReplyContext,
): UncertainReading {
  if (isNotSure(text)) return { ok: true, value: 'unknown' };
  const options = { kind: of, units, limits };
  const range = text.trim().replace(/^between (.+) and (.+)$/i, '$1 to $2');
  if (!looksLikeRange(range)) {
    const reading = parseQuantity(text, options);
    if (reading.ok) return { ok: true, value: reading.value };
    const meant = withTo(text);
    if (meant !== null && parseRange(meant, options).ok) {
      return { ok: false, why: `"${text.trim()}" is no number: for a range type "${meant}", or "not sure".` };
    }
    return { ok: false, why: faultSentence(reading.fault, units) };
  }
  const reading = parseRange(range, options);
  if (!reading.ok) return { ok: false, why: faultSentence(reading.fault, units) };
  const [low, high] = [reading.low.value, reading.high.value];
  return { ok: true, value: low === high ? low : [low, high] };
}

/** A range as people write it, which may as well be a fraction or a slip: '30-35 mm' → '30 to 35 mm'. */
function withTo(text: string): string | null {
  const [, low, high] = /^([^-]*\d[^-]*)-([^-]*\d[^-]*)$/.exec(plainCharacters(text)) ?? [];
  return low === undefined || high === undefined ? null : `${low.trim()} to ${high.trim()}`;
}

const sizesLike = (count: number, { units }: ReplyContext): string =>
  (units === 'inch' ? ['3 1/2', '2 1/2', '2'] : ['90', '60', '55']).slice(0, count).join(' x ');

function readQuantities(
  text: string,
  field: Extract<Field, { kind: 'quantities' }>,
  context: ReplyContext,
): ReplyReading {
  const pieces = splitNumbers(text, field.names?.length ?? null);
  if (field.names !== null && pieces.length !== field.names.length) {
    const found =
      pieces.length > 1
        ? `That is ${pieces.length} numbers`
        : /\d/.test(text)
          ? 'That is one number'
          : `"${text.trim()}" is no number`;
    return {
      ok: false,
      why: `${found}: type ${field.names.join(' x ')}, such as ${sizesLike(field.names.length, context)}, or "not sure".`,
    };
  }
  const values: Uncertain[] = [];
  for (const piece of pieces) {
    const reading = readUncertain(piece, field, context);
    if (!reading.ok) return reading;
    values.push(reading.value);
  }
  if (values.every((value) => value === 'unknown')) return { ok: true, value: 'unknown' };
  return { ok: true, value: values };
}

/** The fault as one sentence, the first letter large. */
function faultSentence(fault: QuantityFault, units: LengthUnits): string {
  const { found, expected, didYouMean } = describeFault(fault, units);
  const sentence = `${found}, ${expected}${didYouMean === undefined ? '' : ` (did you mean "${didYouMean}"?)`}`;
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}, or "not sure".`;
}
