import type * as z from 'zod';
import { absentChoiceField } from '../documents/fields/plain-fields.ts';
import { absentNumberField } from '../documents/fields/quantity-fields.ts';
import { optionalMap } from '../documents/fields/strict-map.ts';
import type { LengthUnits, QuantityKind } from '../quantities/kinds.ts';
import {
  ASSUMED_COUPLING,
  ASSUMPTION_GROUPS,
  ASSUMPTIONS,
  type Assumption,
  type AssumptionOverrides,
} from './assumptions.ts';

/** Overrides of assumptions by name, each within the range that makes sense. */
export function assumeField(units: LengthUnits): z.ZodType<AssumptionOverrides> {
  const { swapMinutes, handLift } = ASSUMPTION_GROUPS;
  const { value, words, means } = ASSUMED_COUPLING;
  const shape = {
    ...numberFields(ASSUMPTIONS, units),
    swapMinutes: optionalMap(numberFields(swapMinutes, units), { means: 'time to swap a rotary' }),
    handLift: optionalMap(
      {
        ...numberFields(handLift, units),
        coupling: absentChoiceField(words, `${means} (usually ${value})`),
      },
      { means: 'how a rotary is lifted by hand' },
    ),
  };
  const map = optionalMap(shape, { means: 'other values for named assumptions' });
  return map.transform((overrides) => {
    const groups = { swapMinutes: given(overrides.swapMinutes), handLift: given(overrides.handLift) };
    const named = Object.entries(groups).filter(([, group]) => Object.keys(group).length > 0);
    return { ...given({ ...overrides, ...NO_GROUPS }), ...Object.fromEntries(named) } as AssumptionOverrides;
  });
}

const NO_GROUPS = { swapMinutes: undefined, handLift: undefined };

/** Only what the file says. */
const given = (fields: object): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

function numberFields<Name extends string>(
  assumptions: Readonly<Record<Name, Assumption>>,
  units: LengthUnits,
): Record<Name, z.ZodType<number | undefined>> {
  const fields = Object.entries<Assumption>(assumptions).map(([name, { unit, range, means, value }]) => {
    const limits = { least: range[0], most: range[1] };
    const usually = `${means} (usually ${[value, unit].join(' ').trim()})`;
    return [name, absentNumberField({ kind: kindOf(unit), units, limits, means: usually })];
  });
  return Object.fromEntries(fields);
}

/** The kind of quantity that an assumption with this unit is. */
export const kindOf = (unit: string): QuantityKind =>
  unit === 'mm' ? 'length' : unit === 'min' ? 'minutes' : 'count';
