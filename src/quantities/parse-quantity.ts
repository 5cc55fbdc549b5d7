import { type Limits, outsideLimits, type QuantityFault } from './faults.ts';
import type { LengthUnits, QuantityKind } from './kinds.ts';
import { parseNumber, plainCharacters } from './parse-number.ts';
import { roundSignificant } from './round-significant.ts';
import { bareUnit, type Unit, unitNamed } from './units.ts';

export interface QuantityOptions {
  readonly kind: QuantityKind;
  /** what a number without a unit is in */
  readonly units: LengthUnits;
  readonly limits?: Limits;
}

/** A quantity that was read: its value in the base unit of its kind, and what was written. */
export interface Quantity {
  readonly ok: true;
  readonly value: number;
  readonly number: number;
  /** symbol of the unit that `number` is in */
  readonly unit: string;
  /** no unit was written */
  readonly bare: boolean;
}

export type QuantityReading = Quantity | { readonly ok: false; readonly fault: QuantityFault };

/**
 * Reads what people write for a quantity. The value is in the base unit of the kind (kinds.ts), rounded to 12
 * significant digits. Nothing is guessed: two readings, no unit of this kind or no number at all is a fault.
 * Example: parseQuantity('3 1/2 in', { kind: 'length', units: 'mm' }).value → 88.9.
 */
export function parseQuantity(text: string, options: QuantityOptions): QuantityReading {
  const { kind } = options;
  if (text.trim() === '') return failed({ code: 'empty', kind });
  const feetAndInches = kind === 'length' ? parseFeetAndInches(text) : null;
  if (feetAndInches !== null) return quantityOf(feetAndInches, INCH, false, options);

  const number = parseNumber(text);
  if (!number.ok) {
    if (number.code === 'ambiguous') {
      const [large, small] = number.readings.map((each) => `${each} ${number.rest}`.trim());
      return failed({ code: 'ambiguous', text: text.trim(), readings: [large ?? '', small ?? ''] });
    }
    return failed({ code: number.code, kind, text: text.trim() });
  }
  if (number.rest === '') return quantityOf(number.value, bareUnit(kind, options.units), true, options);
  if (!/^["'°º˚%]|^\/? *\p{L}/u.test(number.rest))
    return failed({ code: 'not-a-number', kind, text: text.trim() });
  const unit = unitNamed(kind, number.rest);
  if (unit === undefined) return failed({ code: 'unknown-unit', kind, unit: number.rest });
  return quantityOf(number.value, unit, false, options);
}

/**
 * The same for a number that needs no reading, such as a number in a YAML file.
 * Example: quantityFromNumber(3.5, { kind: 'length', units: 'inch' }).value → 88.9.
 */
export function quantityFromNumber(number: number, options: QuantityOptions): QuantityReading {
  if (!Number.isFinite(number)) return failed({ code: 'not-finite', text: String(number) });
  return quantityOf(number, bareUnit(options.kind, options.units), true, options);
}

const INCH = bareUnit('length', 'inch');
const FEET_AND_INCHES =
  /^([^a-z"']+?) *(?:'|ft\.?|feet|foot) *[-,]? *([^a-z"']+?) *(?:"|''|in\.?|inch|inches)$/i;

/** `5' 3 1/2"`, `5 ft 3 in`, in inches; null for anything else. */
function parseFeetAndInches(text: string): number | null {
  const match = FEET_AND_INCHES.exec(plainCharacters(text).slice(0, 80));
  if (match === null) return null;
  const feet = parseNumber(match[1] ?? '');
  const inches = parseNumber(match[2] ?? '');
  if (!feet.ok || !inches.ok || feet.rest !== '' || inches.rest !== '') return null;
  // 1'500" is 1500 inches, not one foot and five hundred inches
  if (!Number.isInteger(feet.value) || inches.value < 0 || inches.value >= 12) return null;
  const negative = feet.value < 0 || Object.is(feet.value, -0);
  return Math.abs(feet.value) * 12 * (negative ? -1 : 1) + (negative ? -inches.value : inches.value);
}

function quantityOf(number: number, unit: Unit, bare: boolean, options: QuantityOptions): QuantityReading {
  const value = roundSignificant(number * unit.factor);
  if (!Number.isFinite(value)) return failed({ code: 'not-finite', text: `${number} ${unit.symbol}` });
  const fault = outsideLimits(value, options.kind, options.limits ?? {});
  if (fault !== null) return failed(fault);
  return { ok: true, value, number, unit: unit.symbol, bare };
}

const failed = (fault: QuantityFault): QuantityReading => ({ ok: false, fault });
