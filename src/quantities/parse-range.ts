import type { QuantityFault } from './faults.ts';
import { plainCharacters } from './parse-number.ts';
import {
  parseQuantity,
  type Quantity,
  type QuantityOptions,
  type QuantityReading,
} from './parse-quantity.ts';

export type RangeReading =
  | { readonly ok: true; readonly low: Quantity; readonly high: Quantity }
  | { readonly ok: false; readonly fault: QuantityFault };

const BETWEEN = / *(?:\.\.\.?|…) *| +(?:to|-) +/i;

/** Whether a text is meant as a range: `2..3 in`, `2 … 3`, `2 to 3 in`, `2 - 3 in`. */
export const looksLikeRange = (text: string): boolean => BETWEEN.test(plainCharacters(text));

/**
 * Reads `2..3 in`, `2 to 3 in` or `2 in to 80 mm`. A unit written once counts for both ends.
 * Example: parseRange('2..3 in', { kind: 'length', units: 'mm' }) → low.value 50.8, high.value 76.2.
 */
export function parseRange(text: string, options: QuantityOptions): RangeReading {
  const ends = plainCharacters(text).split(BETWEEN);
  const [first = '', second = ''] = ends;
  if (ends.length !== 2) {
    return { ok: false, fault: { code: 'not-a-number', kind: options.kind, text: text.trim() } };
  }
  const [low, high] = withOneUnit(first, second, options);
  if (!low.ok) return low;
  if (!high.ok) return high;
  if (low.value > high.value)
    return { ok: false, fault: { code: 'wrong-way-round', low: first, high: second } };
  return { ok: true, low, high };
}

function withOneUnit(
  first: string,
  second: string,
  options: QuantityOptions,
): [QuantityReading, QuantityReading] {
  const unlimited = { kind: options.kind, units: options.units };
  const low = parseQuantity(first, unlimited);
  const high = parseQuantity(second, unlimited);
  if (!low.ok || !high.ok || low.bare === high.bare) {
    return [parseQuantity(first, options), parseQuantity(second, options)];
  }
  const unit = low.bare ? high.unit : low.unit;
  return [
    parseQuantity(low.bare ? `${first} ${unit}` : first, options),
    parseQuantity(high.bare ? `${second} ${unit}` : second, options),
  ];
}
