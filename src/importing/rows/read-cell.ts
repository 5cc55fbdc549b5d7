import { nearest } from '../../documents/nearest.ts';
import { quoted } from '../../documents/printable.ts';
import { describeFault } from '../../quantities/describe-fault.ts';
import type { QuantityFault } from '../../quantities/faults.ts';
import type { QuantityKind } from '../../quantities/kinds.ts';
import { plainCharacters } from '../../quantities/parse-number.ts';
import { parseQuantity } from '../../quantities/parse-quantity.ts';
import { looksLikeRange, parseRange } from '../../quantities/parse-range.ts';
import type { CellForm, ImportField } from '../fields/import-field.ts';
import { headingWords } from '../mapping/heading-words.ts';
import { readList } from './read-lists.ts';

/** A value as a catalog in mm holds it. */
export type CellValue =
  | number
  | string
  | boolean
  | null
  | readonly number[]
  | readonly Readonly<Record<string, unknown>>[];

export type CellReading =
  | { readonly ok: true; readonly value: CellValue | 'unknown' }
  /** a number without a unit, of a kind that needs one */
  | { readonly ok: false; readonly why: 'no-unit' }
  | { readonly ok: false; readonly why: 'fault'; readonly found: string; readonly expected: string };

export interface CellContext {
  /** of the column */
  readonly unit: string | null;
  /** of the file: for lengths and masses */
  readonly units: 'mm' | 'inch' | 'unknown';
  readonly decimals: 'point' | 'comma' | 'unknown';
}

const NOTHING = new Set([
  '',
  '-',
  '--',
  '/',
  'n/a',
  'na',
  '#n/a',
  '?',
  '??',
  'unknown',
  'not known',
  'not sure',
  'tbd',
  'tba',
  'tbc',
  'n.a.',
  '…',
  '...',
  '.',
  'x?',
]);

/** Whether a cell says that nothing is known. Example: isNothing('n/a') → true. */
const isNothing = (text: string): boolean =>
  NOTHING.has(plainCharacters(text).replace(/[–—−]/g, '-').toLowerCase());

const NONE = new Set(['none', 'no', 'not available', 'not offered', 'without']);
const isNone = (text: string): boolean => NONE.has(text.trim().toLowerCase());

/** Kinds that the trade writes in one unit only, so that none has to be written. */
const WITHOUT_UNIT: readonly QuantityKind[] = [
  'rotation',
  'apparentPower',
  'voltage',
  'angle',
  'money',
  'count',
];

/**
 * What a cell says for a field, as a catalog in mm and kg holds it; 'unknown' where it says nothing. A unit in the cell
 * wins over that of the column. Nothing is guessed. Example: ('30', travel, { unit: 'in' }) → 762.
 */
export function readCell(text: string, { cell }: ImportField, context: CellContext): CellReading {
  if (isNothing(text)) return { ok: true, value: 'unknown' };
  if (text.startsWith('='))
    return fault(`${quoted(text)} is a formula`, 'expected its value: save the file with values');
  if (/^#(?:REF!|DIV\/0!|VALUE!|NAME\?|NUM!|NULL!|SPILL!|CALC!)$/i.test(text))
    return fault(`${quoted(text)} is the error of a formula`, 'expected a value');
  switch (cell.form) {
    case 'quantity':
      return cell.orNone === true && isNone(text) ? given(null) : readNumber(text, cell.of, context);
    case 'range':
      return cell.orNone === true && isNone(text) ? given(null) : readRange(text, cell.of, context);
    case 'several':
      return readSeveral(inParts(text, cell.count), cell, context);
    case 'quantities':
      return readSeveral(text.split(/\s*(?:[;/&]|\band\b)\s*/i), cell, context);
    case 'choice':
      return readChoice(text, cell.meanings);
    case 'text':
      return given(cell.orNone === true && isNone(text) ? 'none' : text);
    case 'flag':
      return readFlag(text);
    case 'feature':
      return readFeature(text, context);
    case 'boxes':
    case 'additions':
      return readList(text, cell.form, context, readCell);
    case 'mounting':
      return isNone(text) ? given(null) : readFlag(text);
  }
}

const given = (value: CellValue): CellReading => ({ ok: true, value });
const fault = (found: string, expected: string): CellReading => ({
  ok: false,
  why: 'fault',
  found,
  expected,
});

/** The number with a unit behind it; null: it has none, and needs one. */
function withUnit(text: string, of: QuantityKind, { unit, units, decimals }: CellContext): string | null {
  const plain = withPoint(plainCharacters(text), of, decimals);
  if (!/[\d.]$/.test(plain)) return plain;
  if (unit !== null) return `${plain} ${unit}`;
  if (WITHOUT_UNIT.includes(of)) return plain;
  if (units === 'unknown') return null;
  if (of === 'length') return `${plain} ${units === 'mm' ? 'mm' : 'in'}`;
  if (of === 'mass') return `${plain} ${units === 'mm' ? 'kg' : 'lb'}`;
  return units === 'mm' ? plain : null;
}

/** What `1,500` is, where that is known: nobody writes a price in thousandths. */
function withPoint(text: string, of: QuantityKind, decimals: CellContext['decimals']): string {
  const money = of === 'money' ? text.replace(/^(?:[$€£¥]|[A-Z]{3})\s*|\s*(?:[$€£¥]|[A-Z]{3})$/g, '') : text;
  const grouped = of === 'money' ? money.replace(/^(\d{1,3})[,.](\d{3})$/, '$1$2') : money;
  if (decimals === 'point') return grouped.replace(/(\d),(?=\d{3}(?:\D|$))/g, '$1');
  if (decimals === 'comma')
    return grouped.replace(/(\d)\.(?=\d{3}(?:\D|$))/g, '$1').replace(/(\d),(\d)/, '$1.$2');
  return grouped;
}

const UNLIMITED = { units: 'mm' } as const;

function readNumber(text: string, of: QuantityKind, context: CellContext): CellReading {
  const whole = withUnit(text.replace(/^±\s*/, ''), of, context);
  if (whole === null && plainNumber(text)) return { ok: false, why: 'no-unit' };
  const reading = parseQuantity(whole ?? text, { kind: of, ...UNLIMITED });
  return reading.ok ? given(reading.value) : unreadable(reading.fault);
}

const plainNumber = (text: string): boolean => parseQuantity(text, { kind: 'count', ...UNLIMITED }).ok;

function unreadable(problem: QuantityFault): CellReading {
  const { found, expected } = describeFault(problem);
  return fault(found, expected);
}

function readRange(text: string, of: QuantityKind, context: CellContext): CellReading {
  // `-20/+110` and `±30` are ranges of the trade
  const plain = plainCharacters(text);
  const [, half] = /^(?:±|\+\/-)\s*(.+)$/.exec(plain) ?? [];
  const spread = half === undefined ? plain : `-${half}..${half}`;
  const dotted = spread.replace(/^([^/]*\d[^/]*?)\s*\/\s*(?=[+-])/, '$1..').replace(/\+/g, '');
  if (!looksLikeRange(dotted)) {
    return fault(`${quoted(text)} is no range`, 'expected both ends, such as -20 … 110');
  }
  const whole = withUnit(dotted, of, context);
  if (whole === null) return { ok: false, why: 'no-unit' };
  const reading = parseRange(whole, { kind: of, ...UNLIMITED });
  return reading.ok ? given([reading.low.value, reading.high.value]) : unreadable(reading.fault);
}

/** Between sizes stands an x; where it does not, a slash or a semicolon. */
const inParts = (text: string, count: number): readonly string[] => {
  const ways = [/\s*[x×*]\s*/i, /\s*[/;]\s*/].map((between) => text.split(between));
  return ways.find((parts) => parts.length === count) ?? [text];
};

function readSeveral(
  texts: readonly string[],
  cell: Extract<CellForm, { form: 'several' | 'quantities' }>,
  context: CellContext,
): CellReading {
  if (cell.form === 'several' && texts.length !== cell.count)
    return fault(
      `${quoted(texts.join(' x '))} is not so many numbers`,
      `expected ${cell.count}, with x between them`,
    );
  // a unit behind the last counts for all
  const [, last = null] = /\d\s*([^\d\s.,]\S*)$/.exec(texts.at(-1) ?? '') ?? [];
  const inside = last === null ? context : { ...context, unit: last };
  const values: number[] = [];
  for (const text of texts) {
    const reading = readNumber(text, cell.of, inside);
    if (!reading.ok) return reading;
    if (typeof reading.value === 'number') values.push(reading.value);
  }
  return given(values);
}

function readChoice(text: string, meanings: Readonly<Record<string, readonly string[]>>): CellReading {
  const key = (words: string): string => headingWords(words).join(' ');
  for (const [value, words] of Object.entries(meanings)) {
    if ([value, ...words].some((each) => key(each) === key(text))) return given(value);
  }
  const values = Object.keys(meanings);
  const near = nearest(text, values);
  const hint = near === undefined ? '' : ` (did you mean ${near}?)`;
  return fault(`${quoted(text)} is none of them`, `expected ${values.join(', ')}${hint}`);
}

function readFlag(text: string): CellReading {
  const word = text.toLowerCase();
  if (['yes', 'y', 'true', 'x', '1', 'standard'].includes(word)) return given(true);
  if (['no', 'n', 'false', '0', 'none'].includes(word)) return given(false);
  return fault(`${quoted(text)} is neither yes nor no`, 'expected yes or no');
}

/** In a catalog a feature that is left out is not offered: null. */
function readFeature(text: string, context: CellContext): CellReading {
  if (isNone(text)) return given(null);
  const word = text.toLowerCase();
  if (['standard', 'std', 'std.', 'included'].includes(word)) return given('standard');
  if (['option', 'optional', 'opt', 'opt.', 'offered', 'yes'].includes(word)) return given('unknown');
  const reading = readNumber(text, 'money', context);
  if (reading.ok) return reading;
  return fault(`${quoted(text)} is no price of an option`, 'expected standard, option, none or a price');
}
