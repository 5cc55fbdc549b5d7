import { isMap } from '../../documents/fields/strict-map.ts';
import { parseDocument } from '../../documents/parse-document.ts';
import { inOrder, type Reading, withSchemaProblems } from '../../documents/problem.ts';
import { schemaProblems } from '../../documents/problems-from-issues.ts';
import { readFileText } from '../../documents/read-file.ts';
import type { Lesson } from './lesson.ts';
import { lessonSchema } from './lesson-schema.ts';

/** Reads a lesson from a file; `text`: what it holds, where that is known. Every problem at once, with line and column; never throws. */
export function readLesson(file: string, text?: string): Reading<Lesson> {
  const reading: Reading<string> = text === undefined ? readFileText(file) : { ok: true, value: text };
  if (!reading.ok) return reading;
  const parsed = parseDocument(reading.value, file);
  if (!parsed.ok) return parsed;
  const document = parsed.value;
  const answers = isMap(document.value) ? document.value.answers : undefined;
  const units = isMap(answers) && answers.units === 'inch' ? 'inch' : 'mm';
  const result = lessonSchema(units).safeParse(document.value);
  const problems = result.success ? [] : schemaProblems(lessonSchema, document, file);
  const all = withSchemaProblems(document.problems, problems);
  if (!result.success || all.length > 0) return { ok: false, problems: inOrder(all) };
  return { ok: true, value: result.data };
}
