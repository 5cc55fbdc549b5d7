import { catalogSchema } from '../src/catalog/catalog-schema.ts';
import { type JsonForm, jsonSchemaOf } from '../src/documents/fields/json-form.ts';
import { answersSchema } from '../src/questions/answers-schema.ts';
import { lessonSchema } from '../src/teaching/lessons/lesson-schema.ts';

const withTitle = (title: string, schema: JsonForm): string =>
  `${JSON.stringify({ title, ...schema }, null, 2)}\n`;

/** The JSON Schemas that editors read, by file name. What may be written does not depend on the units. */
export const schemaTexts = (): Readonly<Record<string, string>> => ({
  'answers.schema.json': withTitle('fivesides answers', jsonSchemaOf(answersSchema('mm'))),
  'lesson.schema.json': withTitle('fivesides lesson', jsonSchemaOf(lessonSchema('mm'))),
  'catalog.schema.json': withTitle('fivesides catalog', jsonSchemaOf(catalogSchema('mm'))),
});
