import { formatNumber } from './format-number.ts';
import type { Interval } from './interval.ts';
import type { LengthUnits } from './kinds.ts';
import { UNITS } from './units.ts';

export interface FormatOptions {
  /** default mm */
  readonly shownIn?: LengthUnits;
  /** where inches are asked for: both, the second in brackets */
  readonly beside?: boolean;
  /** which of both stands first; default mm */
  readonly first?: LengthUnits;
  /** thousands set apart by a thin or a plain space; default: not at all */
  readonly grouped?: 'thin' | 'plain';
  /** written after `money` */
  readonly currency?: string;
}

interface Shown {
  readonly symbol: string;
  /** one base unit in this one */
  readonly factor: number;
  /** places after the point of numbers of 1 and more */
  readonly decimals?: number;
  /** as many places as that, however large the number */
  readonly exact?: boolean;
}

/** The unit that stands beside, or instead of, a metric one. */
const IN_INCH: Readonly<Record<string, Shown>> = {
  mm: from('length', 'in', 3),
  kg: from('mass', 'lb'),
  N·m: from('torque', 'lbf·ft'),
  bar: from('pressure', 'psi'),
  'L/min': from('airFlow', 'cfm'),
  'm/min': from('cuttingSpeed', 'ft/min'),
  'mm/min': from('feed', 'in/min'),
  'mm/tooth': { ...from('feedPerTooth', 'in/tooth'), decimals: 4 },
  'mm/rev': { ...from('feedPerTurn', 'in/rev'), decimals: 4 },
  kPa: from('floorLoad', 'psf'),
  'kg·m²': from('inertia', 'lb·ft²'),
  'm²': { symbol: 'ft²', factor: 1 / 0.3048 ** 2 },
};

const DECIMALS: Readonly<Record<string, number>> = { mm: 2, years: 1 };
const WITHOUT_SPACE = new Set(['°', '']);

/**
 * A quantity in words, in its base unit, or in inches where those are asked for (with `beside`: both). The unit is
 * any base unit of kinds.ts; `share` is written in percent, `amount` is money to the cent; a unit that is not known is written as it is.
 * Example: formatQuantity(88.9, 'mm', { shownIn: 'inch', beside: true }) → '88.9 mm (3.5 in)'.
 */
export function formatQuantity(value: number, unit: string, options: FormatOptions = {}): string {
  return formatAll([value], unit, options);
}

/**
 * A number that may not be known. Example: formatInterval({ low: 2, high: 3 }, 'kg') → '2 to 3 kg';
 * an end that nothing bounds: 'at least 2 kg', 'at most 3 kg', 'no limit known'.
 */
export function formatInterval({ low, high }: Interval, unit: string, options: FormatOptions = {}): string {
  if (low === high) return formatAll([low], unit, options);
  if (high === Number.POSITIVE_INFINITY) {
    return low === Number.NEGATIVE_INFINITY
      ? 'no limit known'
      : `at least ${formatAll([low], unit, options)}`;
  }
  if (low === Number.NEGATIVE_INFINITY) return `at most ${formatAll([high], unit, options)}`;
  return formatAll([low, high], unit, options);
}

function formatAll(values: readonly number[], unit: string, options: FormatOptions): string {
  const metric = written(values, metricUnit(unit, options.currency), options);
  const inInch = IN_INCH[unit];
  if (options.shownIn !== 'inch' || inInch === undefined) return metric;
  const inch = written(values, inInch, options);
  if (options.beside !== true) return inch;
  return options.first === 'inch' ? `${inch} (${metric})` : `${metric} (${inch})`;
}

function metricUnit(unit: string, currency = ''): Shown {
  if (unit === 'share') return { symbol: '%', factor: 100, decimals: 1 };
  if (unit === 'money') return { symbol: currency, factor: 1 };
  if (unit === 'amount') return { symbol: currency, factor: 1, decimals: 2, exact: true };
  const decimals = DECIMALS[unit];
  return decimals === undefined ? { symbol: unit, factor: 1 } : { symbol: unit, factor: 1, decimals };
}

function written(values: readonly number[], unit: Shown, options: FormatOptions): string {
  const texts = values.map((value) => {
    const number = value * unit.factor;
    return formatNumber(number, decimalsFor(number, unit), options.grouped);
  });
  const numbers = [...new Set(texts)].join(' to ');
  if (WITHOUT_SPACE.has(unit.symbol)) return numbers + unit.symbol;
  return `${numbers} ${unit.symbol}`;
}

/** Four significant digits, a millimeter to a tenth at least, and never more than the unit deserves. */
function decimalsFor(value: number, { symbol, decimals = 3, exact = false }: Shown): number {
  if (exact) return decimals;
  const before = Math.max(1, Math.floor(Math.log10(Math.max(1, Math.abs(value)))) + 1);
  const least = symbol === 'mm' ? 1 : symbol === 'in' ? 2 : 0;
  return Math.max(least, Math.min(decimals, 4 - before));
}

function from(kind: keyof typeof UNITS, symbol: string, decimals?: number): Shown {
  const unit = UNITS[kind].find((each) => each.symbol === symbol);
  if (unit === undefined) throw new Error(`${symbol} is no unit of ${kind}`);
  const shown = { symbol, factor: 1 / unit.factor };
  return decimals === undefined ? shown : { ...shown, decimals };
}
