import { quoted } from '../../documents/printable.ts';
import { describeFault } from '../../quantities/describe-fault.ts';
import type { QuantityFault } from '../../quantities/faults.ts';
import type { QuantityKind } from '../../quantities/kinds.ts';
import { plainCharacters } from '../../quantities/parse-number.ts';
import { parseQuantity } from '../../quantities/parse-quantity.ts';
import { looksLikeRange, parseRange } from '../../quantities/parse-range.ts';
import type { CellForm } from '../fields/import-field.ts';
import { type CellContext, type CellReading, fault, given } from './cell-reading.ts';

/** Kinds that the trade writes in one unit only, so that none has to be written. */
const WITHOUT_UNIT: readonly QuantityKind[] = [
  'rotation',
  'apparentPower',
  'voltage',
  'angle',
  'money',
  'count',
];

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

/** The one number of a cell, in the base unit of its kind. */
export function readNumber(text: string, of: QuantityKind, context: CellContext): CellReading {
  // signs of the trade: ± before an accuracy, Ø before a diameter, ,- behind an amount
  const one = text
    .replace(/^(?:±|\+\s?\/\s?-|[Øø⌀])\s*/, '')
    .replace(of === 'money' ? /[,.][-–—]{1,2}$/ : /$^/, '');
  if (slashIn(one, of) === 'two numbers') {
    const fraction = of === 'length' ? ', or a fraction of an inch such as 3/8' : '';
    return fault(`${quoted(text)} is two numbers with a slash between them`, `expected one${fraction}`);
  }
  const whole = withUnit(one, of, context);
  if (whole === null && plainNumber(one)) return { ok: false, why: 'no-unit' };
  const reading = parseQuantity(whole ?? one, { kind: of, ...UNLIMITED });
  if (reading.ok) return given(reading.value);
  const { fault: problem } = reading;
  // without the unit of the column, which nobody finds in the cell
  return unreadable(problem.code === 'not-a-number' ? { ...problem, text } : problem);
}

/** `220/440` is two voltages, `60/40` two loads: only a part of an inch, or one behind a whole number, is a fraction. */
function slashIn(text: string, of: QuantityKind): 'fraction' | 'two numbers' | 'none' {
  const found = /^[+-]?\s*(\d[\d ']*?[ -]\s*)?(\d+)\s*\/\s*(\d+)(?![\d/.,])/.exec(plainCharacters(text));
  if (found === null) return 'none';
  const [, whole, top, bottom = ''] = found;
  const isPart = Number(top) % 2 === 1 && Number(top) < Number(bottom) && /^(?:2|4|8|16|32|64)$/.test(bottom);
  return isPart && (whole !== undefined || of === 'length') ? 'fraction' : 'two numbers';
}

const plainNumber = (text: string): boolean => parseQuantity(text, { kind: 'count', ...UNLIMITED }).ok;

function unreadable(problem: QuantityFault): CellReading {
  const { found, expected } = describeFault(problem);
  return fault(found, expected);
}

/** Both ends of a range in one cell. */
export function readRange(text: string, of: QuantityKind, context: CellContext): CellReading {
  // `-20/+110` and `±30` are ranges of the trade
  const plain = plainCharacters(text);
  const [, half] = /^(?:±|\+\/-)\s*(.+)$/.exec(plain) ?? [];
  const spread = half === undefined ? plain : `-${half}..${half}`;
  // `4-24` in a column of ranges; `3-1/2` is a number
  const dashed = spread.replace(
    /^(\d+(?:[.,]\d+)?)\s*-\s*(?=\d+(?:[.,]\d+)?(?:\s*[^\s\d/.,-][^\d/-]*)?$)/,
    '$1..',
  );
  const dotted = dashed.replace(/^([^/]*\d[^/]*?)\s*\/\s*(?=[+-])/, '$1..').replace(/\+/g, '');
  if (!looksLikeRange(dotted)) {
    return fault(`${quoted(text)} is no range`, 'expected both ends, such as -20 … 110');
  }
  const whole = withUnit(dotted, of, context);
  if (whole === null) return { ok: false, why: 'no-unit' };
  const reading = parseRange(whole, { kind: of, ...UNLIMITED });
  return reading.ok ? given([reading.low.value, reading.high.value]) : unreadable(reading.fault);
}

/** Between sizes stands an x; where it does not, a slash or a semicolon. */
export const inParts = (text: string, count: number): readonly string[] => {
  const ways = [/\s*[x×*]\s*/i, /\s*[/;]\s*/].map((between) => text.split(between));
  return ways.find((parts) => parts.length === count) ?? [text];
};

/**
 * The parts of a cell that several keys share in order, each with the unit behind the last where it is of that kind; null: it
 * does not have so many. Example: sharedParts('60 / 40 kg', ['mass', 'mass']) → ['60 kg', '40 kg'].
 */
export function sharedParts(text: string, kinds: readonly QuantityKind[]): readonly string[] | null {
  const last = kinds.at(-1) ?? 'count';
  if (slashIn(text, last) === 'fraction') return null;
  const parts = inParts(plainCharacters(text), kinds.length);
  if (parts.length !== kinds.length || parts.some((part) => !/\d/.test(part))) return null;
  const unit = unitBehind(parts);
  return parts.map((part, at) =>
    unit !== null && kinds[at] === last && /[\d.]$/.test(part) ? `${part} ${unit}` : part,
  );
}

/** The unit behind the last of several numbers, which counts for all. */
const unitBehind = (texts: readonly string[]): string | null =>
  /\d\s*([^\d\s.,]\S*)$/.exec(texts.at(-1) ?? '')?.[1] ?? null;

/** All numbers of a cell, in their order. */
export function readSeveral(
  texts: readonly string[],
  cell: Extract<CellForm, { form: 'several' | 'quantities' }>,
  context: CellContext,
): CellReading {
  if (cell.form === 'several' && texts.length !== cell.count)
    return fault(
      `${quoted(texts.join(' x '))} is not so many numbers`,
      `expected ${cell.count}, with x between them`,
    );
  const last = unitBehind(texts);
  const inside = last === null ? context : { ...context, unit: last };
  const values: number[] = [];
  for (const text of texts) {
    const reading = readNumber(text, cell.of, inside);
    if (!reading.ok) return reading;
    if (typeof reading.value === 'number') values.push(reading.value);
  }
  return given(values);
}
