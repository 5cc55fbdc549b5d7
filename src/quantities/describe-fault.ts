import { distance } from 'fastest-levenshtein';
import type { Limits, QuantityFault } from './faults.ts';
import { formatNumber } from './format-number.ts';
import { BASE_UNITS, type LengthUnits, type QuantityKind } from './kinds.ts';
import { bareUnit, UNITS, unitKey } from './units.ts';

/** What was found and what is expected instead, two clauses; the nearest right word where one is near. */
export interface FaultWords {
  readonly found: string;
  readonly expected: string;
  readonly didYouMean?: string;
}

const NOUNS: Readonly<Record<QuantityKind, string>> = {
  length: 'length',
  mass: 'mass',
  torque: 'torque',
  angle: 'angle',
  accuracy: 'angular accuracy',
  rotation: 'speed',
  power: 'power',
  apparentPower: 'connected load',
  voltage: 'voltage',
  pressure: 'pressure',
  airFlow: 'air flow',
  cuttingSpeed: 'cutting speed',
  feed: 'feed',
  feedPerTooth: 'feed per tooth',
  feedPerTurn: 'feed per turn',
  acceleration: 'acceleration',
  minutes: 'time',
  years: 'time',
  share: 'share',
  floorLoad: 'floor load',
  inertia: 'inertia',
  money: 'price',
  count: 'number',
};

/** Units of a kind as a list for people: `mm, cm, m, µm, in, ft, thou`; empty where it has none. */
const unitSymbols = (kind: QuantityKind): readonly string[] =>
  UNITS[kind].map((each) => each.symbol).filter((symbol) => symbol !== 'share' && symbol !== 'years');

/** What may be written for a kind, e.g. `a length in mm, cm, m, µm, in, ft or thou`. */
export function allowedForms(kind: QuantityKind): string {
  const symbols = unitSymbols(kind);
  if (kind === 'count' || kind === 'money')
    return kind === 'count' ? 'a number' : 'an amount of money without a sign';
  if (kind === 'share') return 'a share between 0 and 1, or in %';
  if (kind === 'years') return 'a number of years';
  const noun = NOUNS[kind];
  return `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun} in ${listed(symbols, 'or')}`;
}

/**
 * A fault in words. Example: an unknown unit of a mass → found `"lbz" is no unit of mass`,
 * expected `expected a mass in kg, g, t or lb`. For whoever works in inches limits stand in both units.
 */
export function describeFault(fault: QuantityFault, units: LengthUnits = 'mm'): FaultWords {
  switch (fault.code) {
    case 'empty':
      return { found: 'nothing is written', expected: `expected ${allowedForms(fault.kind)}` };
    case 'not-a-number':
      return { found: `"${fault.text}" is no number`, expected: `expected ${allowedForms(fault.kind)}` };
    case 'not-finite':
      return { found: `${fault.text} is no number to compute with`, expected: 'expected a finite number' };
    case 'division-by-zero':
      return { found: `"${fault.text}" divides by zero`, expected: 'expected a fraction such as 3/8' };
    case 'ambiguous': {
      const [large, small] = fault.readings;
      return { found: `"${fault.text}" can be ${large} or ${small}`, expected: `write ${large} or ${small}` };
    }
    case 'unknown-unit':
      return unknownUnit(fault.kind, fault.unit);
    case 'outside': {
      const outside = {
        found: `${withUnit(fault.value, fault.kind, units)} is out of range`,
        expected: `expected ${describeBroken(fault.value, fault.limits, fault.kind, units)}`,
      };
      // 1.9 is no percentage that anybody means
      const isPercent = fault.kind === 'share' && fault.value >= 2 && fault.value <= 100;
      return isPercent ? { ...outside, didYouMean: `${formatNumber(fault.value, 6)} %` } : outside;
    }
    case 'not-whole':
      return {
        found: `${formatNumber(fault.value, 6)} is no whole number`,
        expected: 'expected a whole number',
      };
    case 'wrong-way-round':
      return {
        found: `the range from ${fault.low} to ${fault.high} runs the wrong way`,
        expected: 'expected the smaller end first',
      };
  }
}

/** Limits in words, e.g. `more than 0°, less than 90°`. */
export function describeLimits(
  { least, most, above, below }: Limits,
  kind: QuantityKind,
  units: LengthUnits = 'mm',
): string {
  const words: string[] = [];
  if (above !== undefined) words.push(`more than ${withUnit(above, kind, units)}`);
  if (least !== undefined) words.push(`at least ${withUnit(least, kind, units)}`);
  if (below !== undefined) words.push(`less than ${withUnit(below, kind, units)}`);
  if (most !== undefined && Number.isFinite(most)) words.push(`at most ${withUnit(most, kind, units)}`);
  return words.join(', ');
}

/** Only the limits that the value does not keep to. */
function describeBroken(
  value: number,
  { least, most, above, below }: Limits,
  kind: QuantityKind,
  units: LengthUnits,
): string {
  const low = (least !== undefined && value < least) || (above !== undefined && value <= above);
  if (low)
    return describeLimits(
      { ...(least === undefined ? {} : { least }), ...(above === undefined ? {} : { above }) },
      kind,
      units,
    );
  return describeLimits(
    { ...(most === undefined ? {} : { most }), ...(below === undefined ? {} : { below }) },
    kind,
    units,
  );
}

function unknownUnit(kind: QuantityKind, unit: string): FaultWords {
  const expected = `expected ${allowedForms(kind)}`;
  if (UNITS[kind].length === 0) return { found: `"${unit}" follows the number`, expected };
  const found = `"${unit}" is no unit of ${NOUNS[kind]}`;
  const key = unitKey(unit);
  const near = UNITS[kind].find(({ spellings }) =>
    spellings.some((each) => each.length > 1 && distance(each, key) === 1 && key.length > 1),
  );
  return near === undefined ? { found, expected } : { found, expected, didYouMean: near.symbol };
}

/** A number of the base unit; in brackets in the unit of whoever works in inches, where that is another one. */
function withUnit(value: number, kind: QuantityKind, units: LengthUnits): string {
  const unit = BASE_UNITS[kind];
  const number = formatNumber(value, 6);
  if (kind === 'money' || kind === 'count' || kind === 'share') return number;
  if (kind === 'angle') return number + unit;
  const { symbol, factor } = bareUnit(kind, units);
  const beside = symbol === unit || value === 0 ? '' : ` (${formatNumber(value / factor, 3)} ${symbol})`;
  return `${number} ${unit}${beside}`;
}

/** `a, b or c` */
function listed(words: readonly string[], conjunction: string): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} ${conjunction} ${last}`;
}
