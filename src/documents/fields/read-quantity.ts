import { allowedForms, describeFault } from '../../quantities/describe-fault.ts';
import type { Limits, QuantityFault } from '../../quantities/faults.ts';
import { formatNumber } from '../../quantities/format-number.ts';
import { BASE_UNITS, type LengthUnits, type QuantityKind } from '../../quantities/kinds.ts';
import { parseQuantity, type QuantityReading, quantityFromNumber } from '../../quantities/parse-quantity.ts';
import { bareUnit } from '../../quantities/units.ts';
import { nearest } from '../nearest.ts';
import { quoted } from '../printable.ts';
import { accepted, type FieldFault, type Read, refused } from './fault.ts';

/** What a quantity in a file has to be. */
export interface QuantityOf {
  readonly kind: QuantityKind;
  /** units of the file */
  readonly units: LengthUnits;
  readonly limits: Limits;
}

export type Pair = readonly [low: number, high: number];

/** Smaller than anything that is made or weighed: what has to be more than nothing is at least this. */
const SMALLEST = 1e-9;
/** Larger than anything: keeps squares and products of what is read finite. */
const LARGEST = 1e12;

/** A number in the units of the file, or a text with its unit. Example: '3.5 in' → 88.9. */
export function readNumber(raw: unknown, of: QuantityOf): Read<number> {
  if (typeof raw === 'number') return readingOf(quantityFromNumber(raw, of), raw, of);
  if (typeof raw === 'string') return readingOf(parseQuantity(raw, of), raw, of);
  return refused({ found: `is ${quoted(raw)}`, expected: `expected ${allowedForms(of.kind)}` });
}

/** The same, or `unknown`. `words`: what may stand there besides numbers, for what is written nearly so. */
export function readStated(
  raw: unknown,
  of: QuantityOf,
  words: readonly string[] = ['unknown'],
): Read<number | 'unknown'> {
  if (raw === 'unknown') return accepted(raw);
  const read = readNumber(raw, of);
  if (read.ok || typeof raw !== 'string') return read;
  const didYouMean = nearest(raw, words);
  if (didYouMean === undefined) return read;
  return refused(...read.faults.map((fault): FieldFault => ({ ...fault, didYouMean })));
}

/** A number, `[lo, hi]`, or `unknown`; a range of one number is that number. */
export function readUncertain(raw: unknown, of: QuantityOf): Read<number | Pair | 'unknown'> {
  if (!Array.isArray(raw)) return readStated(raw, of);
  const pair = readPair(raw, of);
  return pair.ok && pair.value[0] === pair.value[1] ? accepted(pair.value[0]) : pair;
}

/** `[lo, hi]`, the smaller first. */
export function readPair(raw: unknown, of: QuantityOf): Read<Pair> {
  if (!Array.isArray(raw) || raw.length !== 2) {
    const found = Array.isArray(raw) ? `has ${entries(raw.length)}` : `is ${quoted(raw)}`;
    return refused({ found, expected: `expected two numbers [lo, hi], each ${allowedForms(of.kind)}` });
  }
  const [low, high] = raw.map((each: unknown) => readNumber(each, of));
  if (low === undefined || high === undefined) return refused();
  if (low.ok && high.ok) {
    if (low.value <= high.value) return accepted([low.value, high.value]);
    const [first, second] = raw.map(written);
    return refused({
      found: `runs the wrong way, from ${first} to ${second}`,
      expected: 'expected the smaller number first',
      didYouMean: `[${second}, ${first}]`,
    });
  }
  const faults = [low, high].flatMap((end, index) =>
    end.ok ? [] : end.faults.map((fault): FieldFault => ({ ...fault, path: [index] })),
  );
  return refused(...faults);
}

function readingOf(reading: QuantityReading, raw: unknown, of: QuantityOf): Read<number> {
  if (!reading.ok) return refused(inWords(reading.fault, raw, of));
  const size = Math.abs(reading.value);
  if (size > LARGEST)
    return refused({ found: `is ${quoted(raw)}`, expected: 'expected a number of a sensible size' });
  if (size > 0 && size < SMALLEST)
    return refused({ found: `is ${quoted(raw)}`, expected: 'expected a larger number' });
  return accepted(reading.value);
}

function inWords(fault: QuantityFault, raw: unknown, of: QuantityOf): FieldFault {
  const words = describeFault(fault, of.units);
  if (fault.code === 'outside') {
    return { ...words, found: `is ${written(raw)}${inBoth(raw, fault.value, of)}` };
  }
  if (fault.code === 'unknown-unit') return { ...words, found: `is ${quoted(raw)} (${words.found})` };
  if (fault.code === 'ambiguous')
    return { ...words, found: `is ${words.found.replace(' can be', ', which can be')}` };
  return { ...words, found: `is ${quoted(raw)}` };
}

/** The unit of a bare number where it is not the base unit, and what was written in the base unit. */
function inBoth(raw: unknown, value: number, { kind, units }: QuantityOf): string {
  const base = BASE_UNITS[kind];
  const reading = typeof raw === 'string' ? parseQuantity(raw, { kind, units }) : null;
  const bare = reading === null || !reading.ok || reading.bare;
  const unit = bare ? bareUnit(kind, units).symbol : reading.unit;
  if (unit === base || kind === 'share') return '';
  return `${bare ? ` ${unit}` : ''} (${formatNumber(value, 3)} ${base})`;
}

const written = (raw: unknown): string => (typeof raw === 'string' ? quoted(raw) : String(raw));

/** Example: entries(3) → '3 entries'. */
export const entries = (count: number): string => (count === 1 ? 'one entry' : `${count} entries`);
