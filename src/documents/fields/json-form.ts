import * as z from 'zod';

/** A piece of a JSON Schema. */
export type JsonForm = Readonly<Record<string, unknown>>;

/** What a template of a file says of a value besides; no word of JSON Schema. */
export interface FormNotes {
  /** what it is, without its unit */
  readonly means: string;
  /** of a bare number; none: '' */
  readonly unit: string;
  /** limits, in words */
  readonly bounds: string;
  /** of the entries of a list with so many of them */
  readonly names?: readonly string[];
}

export const NOTES = 'x-notes';

/** What a field looks like in a JSON Schema; made only when one is written out. */
const forms = new WeakMap<z.core.$ZodType, (noted: boolean) => JsonForm>();

/** Remembers the JSON form of a field, which may hold `NOTES`. Returns the field. */
export function withJsonForm<Field extends z.ZodType>(
  field: Field,
  form: (noted: boolean) => JsonForm,
): Field {
  forms.set(field, form);
  return field;
}

/** The JSON Schema of what may be written in a file, for editors; `noted`: with notes, which are no JSON Schema. */
export function jsonSchemaOf(schema: z.ZodType, noted = false): JsonForm {
  const made = z.toJSONSchema(schema, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      const { [NOTES]: notes, ...form } = forms.get(zodSchema)?.(noted) ?? {};
      Object.assign(jsonSchema, form, noted && notes !== undefined ? { [NOTES]: notes } : {});
    },
  });
  return { ...made };
}

/** The same to stand inside another one. */
export function jsonFormOf(schema: z.ZodType, noted: boolean): JsonForm {
  const { $schema, ...form } = jsonSchemaOf(schema, noted);
  return form;
}
