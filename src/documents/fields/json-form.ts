import * as z from 'zod';

/** A piece of a JSON Schema. */
export type JsonForm = Readonly<Record<string, unknown>>;

/** What a field looks like in a JSON Schema; made only when a schema is written out. */
const forms = new WeakMap<z.core.$ZodType, () => JsonForm>();

/** Remembers the JSON form of a field. Returns the field. */
export function withJsonForm<Field extends z.ZodType>(field: Field, form: () => JsonForm): Field {
  forms.set(field, form);
  return field;
}

/** The JSON Schema of what may be written in a file, for editors. */
export function jsonSchemaOf(schema: z.ZodType): JsonForm {
  const made = z.toJSONSchema(schema, {
    io: 'input',
    override: ({ zodSchema, jsonSchema }) => {
      Object.assign(jsonSchema, forms.get(zodSchema)?.());
    },
  });
  return { ...made };
}

/** The same to stand inside another one. */
export function jsonFormOf(schema: z.ZodType): JsonForm {
  const { $schema, ...form } = jsonSchemaOf(schema);
  return form;
}
