import * as z from 'zod';
import { accepted } from '../documents/fields/fault.ts';
import { absentField } from '../documents/fields/field.ts';
import {
  choiceField,
  flagField,
  optionalTextField,
  requiredChoiceField,
} from '../documents/fields/plain-fields.ts';
import {
  absentNumberField,
  numberField,
  pairField,
  quantitiesIn,
  statedField,
  statedListField,
} from '../documents/fields/quantity-fields.ts';
import { readStated } from '../documents/fields/read-quantity.ts';
import { optionalMap, strictMap } from '../documents/fields/strict-map.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import { builtInField } from './built-in-schema.ts';
import {
  CLEARANCE_KINDS,
  type ClearanceAddition,
  FEATURES,
  MACHINE_KINDS,
  type Machine,
  type Slots,
} from './catalog.ts';
import { idField, nameField, priceField } from './row-fields.ts';

/** A machine as its row says it, before anybody knows where the row stands. */
export type MachineRow = Omit<Machine, 'from'>;

export function machineField(units: LengthUnits): z.ZodType<MachineRow> {
  const of = quantitiesIn(units);
  const size = (means: string) => of('length', { above: 0, most: 1e5 }, means);
  const count = (means: string) => statedField(of('count', { above: 0, most: 1e7 }, means));
  const room = (means: string) => statedField(of('length', { least: 0, most: 1e5 }, means));
  const map = strictMap(
    {
      id: idField(),
      name: nameField(),
      kind: requiredChoiceField(MACHINE_KINDS, 'what kind of machine it is'),
      spindle: choiceField(['vertical', 'horizontal'], 'direction of the spindle', 'unknown'),
      travel: statedListField(size('travel'), ['X', 'Y', 'Z']),
      table: tableField(units),
      noseToTable: pairField(
        of(
          'length',
          { least: -1e5, most: 1e5 },
          'spindle nose above the table (horizontal spindle: from the middle of the table), both ends of Z',
        ),
      ),
      spindleToTable: pairField(
        of(
          'length',
          { least: -1e5, most: 1e5 },
          'horizontal mills: center of the spindle above the table, bottom and top of Y',
        ),
      ),
      builtIn: builtInField(units),
      rotaryIncluded: optionalTextField({ means: 'id of the rotary that comes with it', longest: 60 }, null),
      throat: statedField(size('spindle axis to column')),
      noseDiameter: statedField(size('diameter of the spindle nose')),
      spindleDrive: optionalMap(
        {
          power: statedField(of('power', { above: 0, most: 1e5 }, 'rated power')),
          torque: statedField(of('torque', { above: 0, most: 1e6 }, 'rated torque')),
          speed: statedField(of('rotation', { above: 0, most: 1e6 }, 'greatest speed')),
          taper: optionalTextField({ means: 'the tool taper', longest: 40 }, 'unknown'),
        },
        { means: 'the spindle drive' },
      ),
      positioning: statedField(of('length', { above: 0, most: 10 }, '± positioning of the linear axes')),
      axisDrives: axisDrivesField(units),
      features: featuresField(units),
      blocks: optionalMap(
        {
          standard: count('blocks a second'),
          lookAhead: count('blocks a second with look-ahead contouring'),
          ahead: count('blocks read ahead'),
          aheadWithLookAhead: count('blocks read ahead with look-ahead contouring'),
        },
        { means: 'how fast the control reads' },
      ),
      acceleration: statedField(
        of('acceleration', { above: 0, most: 1000 }, 'acceleration of the linear axes'),
      ),
      clearance: clearanceField(units),
      footprint: statedListField(size('footprint'), ['width', 'depth', 'height']),
      service: optionalMap(
        { left: room('left'), right: room('right'), front: room('front'), rear: room('rear') },
        { means: 'room that service needs on each side' },
      ),
      shipping: statedListField(size('shipping size'), ['length', 'width', 'height']),
      mass: statedField(of('mass', { above: 0, most: 1e7 }, 'mass')),
      power: optionalMap(
        {
          kVA: statedField(of('apparentPower', { above: 0, most: 1e5 }, 'connected load')),
          volts: statedField(of('voltage', { above: 0, most: 1e5 }, 'between phases')),
          phases: statedField(of('count', { least: 1, most: 3, whole: true }, '1 or 3')),
        },
        { means: 'electric supply' },
      ),
      air: optionalMap(
        {
          flow: statedField(of('airFlow', { least: 0, most: 1e6 }, 'flow that it needs')),
          bar: statedField(of('pressure', { least: 0, most: 1000 }, 'pressure that it needs')),
        },
        { means: 'compressed air' },
      ),
      price: priceField(units, 'price'),
    },
    { means: 'a machine', noneIsSaid: [] },
  );
  return map.transform((row) =>
    row.kind === 'five-axis'
      ? { ...row, table: null, noseToTable: 'unknown' as const, spindleToTable: null }
      : {
          ...row,
          builtIn: null,
          spindleToTable: row.spindle === 'horizontal' ? row.spindleToTable : null,
        },
  );
}

function tableField(units: LengthUnits) {
  const of = quantitiesIn(units);
  const size = (means: string) => of('length', { above: 0, most: 1e5 }, means);
  const slots = {
    count: statedField(of('count', { least: 0, most: 1000, whole: true }, 'number of T-slots')),
    width: statedField(size('width of a slot')),
    pitch: statedField(size('from slot to slot')),
    center: flagField('whether a slot runs through the middle', 'unknown'),
    along: choiceField(['x', 'y'], 'direction of the slots', 'unknown'),
  } satisfies Record<keyof Slots, unknown>;
  return optionalMap(
    {
      size: statedListField(size('size of the table'), ['along X', 'along Y']),
      height: statedField(size('table above the floor')),
      load: statedField(of('mass', { above: 0, most: 1e6 }, 'largest load')),
      slots: optionalMap(slots, { means: 'T-slots' }),
    },
    { means: 'the table' },
  );
}

function axisDrivesField(units: LengthUnits) {
  const count = (means: string) =>
    statedField(quantitiesIn(units)('count', { least: 0, most: 10, whole: true }, means));
  return optionalMap(
    {
      fitted: count('drives for rotary axes that are there'),
      offered: count('drives that can be added'),
      priceEach: priceField(units, 'price of each that is added'),
    },
    { means: 'drives for rotary axes' },
  );
}

/** standard, or a price, or unknown; a feature left out is not offered. */
function featuresField(units: LengthUnits): z.ZodType<Machine['features']> {
  const price = { kind: 'money', units, limits: { least: 0, most: 1e9 } } as const;
  const feature = absentField<number | 'standard' | 'unknown'>(
    { description: 'standard, or its price', type: ['number', 'string'] },
    (raw) => (raw === 'standard' ? accepted(raw) : readStated(raw, price, ['standard', 'unknown'])),
  );
  const shape = Object.fromEntries(FEATURES.map((each) => [each, feature]));
  const map = optionalMap(shape, { means: 'control and spindle features that are offered' });
  return map.transform((features): Machine['features'] =>
    Object.fromEntries(Object.entries(features).filter(([, each]) => each !== undefined)),
  );
}

/** What raises the nose above the table. A spacer makes the machine higher by itself, a lowered table does not. */
function clearanceField(units: LengthUnits): z.ZodType<readonly ClearanceAddition[]> {
  const of = quantitiesIn(units);
  const addition = strictMap(
    {
      kind: requiredChoiceField(CLEARANCE_KINDS, 'what is added'),
      adds: numberField(
        of('length', { above: 0, most: 1e4 }, 'how much higher the nose stands above the table'),
      ),
      price: priceField(units, 'price'),
      height: absentNumberField(of('length', { least: 0, most: 1e4 }, 'how much higher the machine becomes')),
    },
    { means: 'a clearance addition' },
  ).transform(
    ({ kind, adds, price, height }): ClearanceAddition => ({
      kind,
      adds,
      price,
      height: height ?? (kind === 'column-spacer' ? adds : 0),
    }),
  );
  return z.array(addition).max(10).prefault([]);
}
