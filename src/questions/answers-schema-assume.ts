import type * as z from 'zod';
import { absentNumberField } from '../documents/fields/quantity-fields.ts';
import { optionalMap } from '../documents/fields/strict-map.ts';
import type { LengthUnits, QuantityKind } from '../quantities/kinds.ts';
import {
  ASSUMPTIONS,
  type Assumption,
  type AssumptionName,
  type AssumptionOverrides,
} from './assumptions.ts';

/** Overrides of assumptions by name, each within the range that makes sense. */
export function assumeField(units: LengthUnits): z.ZodType<AssumptionOverrides> {
  const fields = Object.entries<Assumption>(ASSUMPTIONS).map(([name, { unit, range, means, value }]) => {
    const kind = kindOf(unit);
    const limits = { least: range[0], most: range[1] };
    return [
      name,
      absentNumberField({
        kind,
        units,
        limits,
        means: `${means} (usually ${[value, unit].join(' ').trim()})`,
      }),
    ];
  });
  const shape: Record<AssumptionName, z.ZodType<number | undefined>> = Object.fromEntries(fields);
  const map = optionalMap(shape, { means: 'other values for named assumptions' });
  return map.transform((overrides) => {
    const given = Object.entries(overrides).filter(([, value]) => value !== undefined);
    return Object.fromEntries(given) as AssumptionOverrides;
  });
}

/** The kind of quantity that an assumption with this unit is. */
export const kindOf = (unit: string): QuantityKind =>
  unit === 'mm' ? 'length' : unit === 'min' ? 'minutes' : 'count';
