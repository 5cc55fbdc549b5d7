import * as z from 'zod';
import { type FieldFault, type Read, refused, report } from './fault.ts';
import { type JsonForm, withJsonForm } from './json-form.ts';

/** A field that has to be there and must not be left empty. */
export const requiredField = <Value>(form: JsonForm, read: (raw: unknown) => Read<Value>): z.ZodType<Value> =>
  fieldOf(form, (raw) => {
    const result = read(raw);
    if (result.ok || (raw !== undefined && raw !== null)) return result;
    const found = raw === null ? 'is empty' : 'is missing';
    return refused(...result.faults.map((fault): FieldFault => ({ ...fault, found })));
  });

/** A field that may be left out, or left empty, and then has a value that says so. */
export const optionalField = <Value>(
  missing: Value,
  form: JsonForm,
  read: (raw: unknown) => Read<Value>,
): z.ZodType<Value> => z._default(fieldOf(form, read), () => missing as z.core.util.NoUndefined<Value>);

/** A field that may be left out, and then is not there. */
export const absentField = <Value>(
  form: JsonForm,
  read: (raw: unknown) => Read<Value>,
): z.ZodType<Value | undefined> => fieldOf(form, read).optional();

function fieldOf<Value>(form: JsonForm, read: (raw: unknown) => Read<Value>): z.ZodType<Value> {
  const field: z.ZodType<unknown> = z.unknown().transform((raw, context): unknown => {
    const result = read(raw);
    if (result.ok) return result.value;
    for (const fault of result.faults) report(context, fault);
    return z.NEVER;
  });
  return withJsonForm(field, () => form) as z.ZodType<Value>;
}
