import * as z from 'zod';
import { eitherField } from '../documents/fields/either-field.ts';
import { choiceField, optionalTextField, requiredChoiceField } from '../documents/fields/plain-fields.ts';
import {
  numberField,
  quantitiesIn,
  requiredPairField,
  statedField,
  statedOrNoneField,
} from '../documents/fields/quantity-fields.ts';
import { isMap, optionalMap, strictMap } from '../documents/fields/strict-map.ts';
import type { Limits } from '../quantities/faults.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import {
  type Hold,
  type HousingBox,
  MOUNTINGS,
  type Mounting,
  ROTARY_CLASSES,
  type Rotary,
} from './catalog.ts';
import { idField, nameField, priceField } from './row-fields.ts';
import { tableMechanicsShape } from './table-mechanics-schema.ts';
import { isTilting } from './tilting.ts';

/** A rotary as its row says it, before anybody knows where the row stands. */
export type RotaryRow = Omit<Rotary, 'from'>;

const SIZE: Limits = { above: 0, most: 1e5 };
const FROM_ZERO: Limits = { least: 0, most: 1e5 };
const ANYWHERE: Limits = { least: -1e5, most: 1e5 };

export function rotaryField(units: LengthUnits): z.ZodType<RotaryRow> {
  const of = quantitiesIn(units);
  const length = (means: string, limits = SIZE) => statedField(of('length', limits, means));
  const map = strictMap(
    {
      id: idField(),
      name: nameField(),
      class: requiredChoiceField(ROTARY_CLASSES, 'what kind of rotary it is'),
      ...tableMechanicsShape(units),
      nose: optionalTextField(
        { means: 'none, or the spindle nose that takes chucks, such as A2-5', longest: 40 },
        'unknown',
      ),
      collet: statedOrNoneField(of('length', SIZE, 'largest bar; null: it takes no collets'), 'unknown'),
      centerHeight: length('tilt axis (single-axis, indexer: rotary axis) above the base'),
      base: optionalMap(
        {
          along: length('along the tilt axis (single-axis, indexer: the rotary axis)'),
          across: length('across it'),
          centerAlong: length('from its end to the rotary center, along', ANYWHERE),
          centerAcross: length('from its side to the rotary center, across', ANYWHERE),
        },
        { means: 'rectangle of the base, and where the rotary center stands in it' },
      ),
      housing: housingField(units),
      mass: statedField(of('mass', { above: 0, most: 1e6 }, 'mass')),
      hold: holdField(units),
      height: length('overall height, tilt 0'),
      tailstock: tailstockField(units),
      liftingPoints: statedField(of('count', { least: 0, most: 20, whole: true }, 'lifting points')),
      air: optionalMap(
        { bar: statedField(of('pressure', { least: 0, most: 1000 }, 'pressure that it needs')) },
        { means: 'compressed air' },
      ),
      price: priceField(units, 'price'),
    },
    { means: 'a rotary', noneIsSaid: ['faceplate', 'collet', 'tilt'] },
  );
  return z.preprocess(withoutWhatItCannotHave, map);
}

/** A table that does not tilt has no tilt, and only an indexer takes collets, unless the row says otherwise. */
function withoutWhatItCannotHave(raw: unknown): unknown {
  if (!isMap(raw)) return raw;
  const collet = raw.class === 'collet-indexer' ? {} : { collet: null };
  const tilt = isTilting(raw.class) ? {} : { tilt: null };
  return { ...collet, ...tilt, ...raw };
}

function housingField(units: LengthUnits): z.ZodType<readonly HousingBox[] | null> {
  const of = quantitiesIn(units);
  const box = strictMap(
    {
      along: requiredPairField(of('length', ANYWHERE, 'from … to, along the axis, from the rotary center')),
      across: requiredPairField(of('length', ANYWHERE, 'from … to, across the axis, from the rotary center')),
      top: numberField(of('length', FROM_ZERO, 'its top, above the base')),
    },
    { means: 'a box beside the work' },
  );
  const field = eitherField<'unknown', HousingBox[]>(
    { text: choiceField([], 'not known', 'unknown'), list: z.array(box).max(50) },
    { means: 'the outline of the housing as boxes', expected: 'expected a list of boxes', orNull: true },
  );
  return z._default(
    field.transform((boxes): readonly HousingBox[] | null => (boxes === 'unknown' ? null : boxes)),
    null,
  );
}

/** A mounting that is not named is not possible; one that is named without numbers is. */
function holdField(units: LengthUnits): z.ZodType<Rotary['hold']> {
  const of = quantitiesIn(units);
  const pitches = eitherField<'unknown', number[]>(
    {
      text: choiceField([], 'not known', 'unknown'),
      list: z
        .array(numberField(of('length', SIZE, 'a pitch')))
        .min(1)
        .max(50),
    },
    { means: 'pitches of its bolts that fit T-slots', expected: 'expected a list such as [80, 160]' },
  );
  const hold = optionalMap(
    {
      keyWidth: statedField(of('length', SIZE, 'width of its keys')),
      pitches: z._default(pitches, 'unknown'),
    },
    { means: 'how it is held in this direction' },
  );
  const absent: z.ZodType<Hold | undefined> = z.optional(hold.unwrap());
  const shape: Record<Mounting, z.ZodType<Hold | undefined>> = {
    'tilt-along-x': absent,
    'tilt-along-y': absent,
    'axis-along-x': absent,
    'axis-along-y': absent,
  };
  const map = strictMap(shape, { means: 'the mountings that its base allows', noneIsSaid: MOUNTINGS });
  const given = map.transform((mountings): Rotary['hold'] => {
    return Object.fromEntries(Object.entries(mountings).filter(([, each]) => each !== undefined));
  });
  const field = eitherField<'unknown', never, Rotary['hold']>(
    { text: choiceField([], 'not known', 'unknown'), map: given },
    { means: 'how it is held on a table, per mounting', expected: 'expected a map of mountings' },
  );
  return z._default(field, 'unknown');
}

function tailstockField(units: LengthUnits): z.ZodType<Rotary['tailstock']> {
  const of = quantitiesIn(units);
  const map = strictMap(
    {
      length: statedField(of('length', SIZE, 'its length on the table')),
      price: priceField(units, 'its price'),
    },
    { means: 'the tailstock that is offered' },
  );
  const none = requiredChoiceField(['none'], 'there is none').transform((): Rotary['tailstock'] => null);
  const field = eitherField<Rotary['tailstock'], never, Rotary['tailstock']>(
    { text: none, map },
    { means: 'the tailstock that is offered', expected: 'expected { length: …, price: … }', orNull: true },
  );
  return z._default(field, null);
}
