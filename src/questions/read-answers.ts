import { isMap } from '../documents/fields/strict-map.ts';
import { parseDocument } from '../documents/parse-document.ts';
import { inOrder, type Problem, type Reading, withSchemaProblems } from '../documents/problem.ts';
import { problemAt, schemaProblems } from '../documents/problems-from-issues.ts';
import { readFileText, STANDARD_INPUT } from '../documents/read-file.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { Answers } from './answers.ts';
import { crossChecked } from './answers-cross-checks.ts';
import { answersSchema } from './answers-schema.ts';
import { type BesideCatalog, faultsBeside } from './beside-catalog.ts';

/** An answers file that was read. */
export interface AnswersFile {
  readonly answers: Answers;
  /** the units of the file: what is shown to whoever wrote it */
  readonly shownIn: LengthUnits;
  readonly text: string;
  /** as it is called in messages */
  readonly file: string;
}

/**
 * Reads an answers file, or standard input for `-`; `text`: what it holds, where that is known already.
 * `catalog`: what they have to agree with besides. Every problem at once, with line and column; never throws.
 */
export function readAnswers(path: string, text?: string, catalog?: BesideCatalog): Reading<AnswersFile> {
  const file = path === '-' ? STANDARD_INPUT : path;
  const reading: Reading<string> = text === undefined ? readFileText(path) : { ok: true, value: text };
  return reading.ok ? answersFromText(reading.value, file, catalog) : reading;
}

function answersFromText(
  text: string,
  file: string,
  catalog: BesideCatalog | undefined,
): Reading<AnswersFile> {
  const parsed = parseDocument(text, file);
  if (!parsed.ok) return parsed;
  const document = parsed.value;
  const shownIn = isMap(document.value) && document.value.units === 'inch' ? 'inch' : 'mm';
  const result = answersSchema(shownIn).safeParse(document.value);
  const faults = [
    ...crossChecked(document.value),
    ...(catalog === undefined ? [] : faultsBeside(document.value, catalog)),
  ];
  const problems: Problem[] = faults.map((fault) => problemAt(fault, document, file));
  if (!result.success) problems.push(...schemaProblems(answersSchema, document, file));
  const all = withSchemaProblems(document.problems, problems);
  if (!result.success || all.length > 0) return { ok: false, problems: inOrder(all) };
  return { ok: true, value: { answers: result.data, shownIn, text, file } };
}
