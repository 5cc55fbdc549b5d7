import { type Limits, outsideLimits } from '../quantities/faults.ts';
import type { QuantityKind } from '../quantities/kinds.ts';
import type { Field, Offer, Value } from './question.ts';

/**
 * Whether a value is one that the field can hold: right type, inside the limits, one of the options.
 * 'unknown' always is. Example: fits({ kind: 'yes-no' }, true, { machines: [] }) → true.
 */
export function fits(field: Field, value: unknown, offer: Offer): value is Value {
  if (value === 'unknown') return true;
  switch (field.kind) {
    case 'yes-no':
      return typeof value === 'boolean';
    case 'text':
      return typeof value === 'string' && value.trim() !== '' && value.length <= field.longest;
    case 'choice':
      return field.options(offer).some((option) => option.value === value);
    case 'quantity':
      return isWithin(value, field.of, field.limits);
    case 'quantities':
      return (
        Array.isArray(value) &&
        (field.names === null ? value.length > 0 : value.length === field.names.length) &&
        value.every((each) => each === 'unknown' || isWithin(each, field.of, field.limits))
      );
    case 'list':
    case 'order': {
      if (!Array.isArray(value) || new Set(value).size !== value.length) return false;
      const options = field.options(offer).map((option) => option.value);
      const known = value.every((each) => options.includes(each));
      if (field.kind === 'order') return known && value.length === options.length;
      return known && value.length > 0 && (value.length === 1 || !value.includes(field.alone));
    }
  }
}

function isWithin(value: unknown, kind: QuantityKind, limits: Limits): boolean {
  if (typeof value === 'number') return Number.isFinite(value) && outsideLimits(value, kind, limits) === null;
  if (!Array.isArray(value) || value.length !== 2) return false;
  const [low, high]: unknown[] = value;
  return isWithin(low, kind, limits) && isWithin(high, kind, limits) && Number(low) < Number(high);
}
