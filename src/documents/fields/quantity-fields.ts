import type * as z from 'zod';
import { describeLimits } from '../../quantities/describe-fault.ts';
import type { Limits } from '../../quantities/faults.ts';
import type { LengthUnits, QuantityKind } from '../../quantities/kinds.ts';
import { bareUnit } from '../../quantities/units.ts';
import { quoted } from '../printable.ts';
import { accepted, type Read, refused } from './fault.ts';
import { absentField, optionalField, requiredField } from './field.ts';
import { type FormNotes, type JsonForm, NOTES } from './json-form.ts';
import {
  entries,
  type Pair,
  type QuantityOf,
  readNumber,
  readPair,
  readStated,
  readUncertain,
} from './read-quantity.ts';

/** A quantity in a file, and what it means, for editors. */
export interface Quantified extends QuantityOf {
  readonly means: string;
}

/** `of(kind, limits, means)` for the units of a file. */
export const quantitiesIn =
  (units: LengthUnits) =>
  (kind: QuantityKind, limits: Limits, means: string): Quantified => ({ kind, units, limits, means });

const NUMBER = { type: ['number', 'string'] };
const PAIR = { type: 'array', items: NUMBER, minItems: 2, maxItems: 2 };

/** A number, a quantity with its unit, `[lo, hi]` or `unknown`. Left out: `missing`. */
export const uncertainField = (
  of: Quantified,
  missing: number | 'unknown' = 'unknown',
): z.ZodType<number | Pair | 'unknown'> =>
  optionalField<number | Pair | 'unknown'>(missing, { ...described(of), anyOf: [NUMBER, PAIR] }, (raw) =>
    readUncertain(raw, of),
  );

/** The same that may be left out, and then is not there. */
export const absentUncertainField = (of: Quantified): z.ZodType<number | Pair | 'unknown' | undefined> =>
  absentField({ ...described(of), anyOf: [NUMBER, PAIR] }, (raw) => readUncertain(raw, of));

/** A number, a quantity with its unit, or `unknown`. Left out: `unknown`. */
export const statedField = (of: Quantified): z.ZodType<number | 'unknown'> =>
  optionalField<number | 'unknown'>('unknown', { ...described(of), ...NUMBER }, (raw) => readStated(raw, of));

/** The same where `null` says that there is none. */
export const statedOrNoneField = (
  of: Quantified,
  missing: 'unknown' | null,
): z.ZodType<number | 'unknown' | null> =>
  optionalField<number | 'unknown' | null>(
    missing,
    { ...described(of), type: ['number', 'string', 'null'] },
    orNone((raw) => readStated(raw, of)),
  );

/** A number that has to be there. */
export const numberField = (of: Quantified): z.ZodType<number> =>
  requiredField({ ...described(of), ...NUMBER }, (raw) => readNumber(raw, of));

/** A number that may be left out, and then is not there. */
export const absentNumberField = (of: Quantified): z.ZodType<number | undefined> =>
  absentField({ ...described(of), ...NUMBER }, (raw) => readNumber(raw, of));

/** `[lo, hi]` that has to be there. */
export const requiredPairField = (of: Quantified): z.ZodType<Pair> =>
  requiredField({ ...described(of), ...PAIR }, (raw) => readPair(raw, of));

/** `[lo, hi]` or `unknown`. Left out: `unknown`. */
export const pairField = (of: Quantified): z.ZodType<Pair | 'unknown'> =>
  optionalField<Pair | 'unknown'>('unknown', { ...described(of), anyOf: [PAIR, UNKNOWN] }, (raw) =>
    raw === 'unknown' ? accepted(raw) : readPair(raw, of),
  );

/** The same where `null` says that there is none. */
export const pairOrNoneField = (
  of: Quantified,
  missing: 'unknown' | null,
): z.ZodType<Pair | 'unknown' | null> =>
  optionalField<Pair | 'unknown' | null>(
    missing,
    { ...described(of), anyOf: [PAIR, UNKNOWN, { type: 'null' }] },
    orNone<Pair | 'unknown'>((raw) => (raw === 'unknown' ? accepted(raw) : readPair(raw, of))),
  );

/** A fixed number of quantities. Left out, or `unknown`: none of them is known. */
export function uncertainListField<const Names extends readonly string[]>(
  of: Quantified,
  names: Names,
): z.ZodType<{ readonly [Index in keyof Names]: number | Pair | 'unknown' }> {
  return listOf(of, names, { anyOf: [NUMBER, PAIR] }, (raw) => readUncertain(raw, of));
}

/** The same without ranges. */
export function statedListField<const Names extends readonly string[]>(
  of: Quantified,
  names: Names,
): z.ZodType<{ readonly [Index in keyof Names]: number | 'unknown' }> {
  return listOf(of, names, NUMBER, (raw) => readStated(raw, of));
}

const UNKNOWN = { type: 'string', const: 'unknown' };

function listOf<const Names extends readonly string[], Value>(
  of: Quantified,
  names: Names,
  items: JsonForm,
  read: (raw: unknown) => Read<Value | 'unknown'>,
) {
  type List = { readonly [Index in keyof Names]: Value | 'unknown' };
  const missing = names.map(() => 'unknown') as unknown as List;
  const list = { type: 'array', items, minItems: names.length, maxItems: names.length };
  return optionalField<List>(missing, { ...described(of, names), anyOf: [list, UNKNOWN] }, (raw) => {
    if (raw === 'unknown') return accepted(missing);
    const expected = `expected ${names.length} numbers: ${names.join(', ')}`;
    if (!Array.isArray(raw)) return refused({ found: `is ${quoted(raw)}`, expected });
    if (raw.length !== names.length) return refused({ found: `has ${entries(raw.length)}`, expected });
    const each = raw.map((item: unknown) => read(item));
    const faults = each.flatMap((item, index) =>
      item.ok ? [] : item.faults.map((fault) => ({ ...fault, path: [index, ...(fault.path ?? [])] })),
    );
    if (faults.length > 0) return refused(...faults);
    return accepted(each.flatMap((item) => (item.ok ? [item.value] : [])) as unknown as List);
  });
}

const orNone =
  <Value>(read: (raw: unknown) => Read<Value>) =>
  (raw: unknown): Read<Value | null> =>
    raw === null || raw === 'none' ? accepted(null) : read(raw);

function described({ kind, units, limits, means }: Quantified, names?: readonly string[]): JsonForm {
  const bounds = describeLimits(telling(limits), kind);
  const [metric, inch] = [bareUnit(kind, 'mm').symbol, bareUnit(kind, 'inch').symbol];
  const bare = metric === inch ? '' : `a bare number is in ${metric}, in a file in inches in ${inch}`;
  const notes: FormNotes = { means, unit: bareUnit(kind, units).symbol, bounds, ...(names && { names }) };
  return {
    description: [means, bare, bounds].filter((clause) => clause !== '').join('; '),
    [NOTES]: notes,
  };
}

/** A limit far beyond anything real only keeps nonsense out; it is not worth a word. */
function telling({ least, most, ...others }: Limits): Limits {
  return {
    ...others,
    ...(least === undefined || least <= -1e4 ? {} : { least }),
    ...(most === undefined || most >= 1e4 ? {} : { most }),
  };
}
