import { dirname, join } from 'node:path';
import { readFileText } from '../documents/read-file.ts';
import { thereAt } from '../documents/there-at.ts';
import { notWritten, writeFileText } from '../documents/write-file.ts';
import { type KeptRuns, keptRuns, keptRunsText } from '../teaching/lessons/kept-runs.ts';
import type { LessonRun } from '../teaching/lessons/run-lesson.ts';
import { usualSessionFile } from './session-file.ts';

/** The file in which it is kept how far somebody has come in lessons: beside the interview. */
export const lessonRunsFile = (env: Readonly<Record<string, string | undefined>>): string =>
  join(dirname(usualSessionFile(env)), 'lessons.json');

/** How far somebody has come in each lesson; null where what is there is no such file. */
export function readLessonRuns(file: string): KeptRuns | null {
  if (thereAt(file) === null) return {};
  const text = readFileText(file);
  return text.ok ? keptRuns(text.value) : null;
}

/** What is said where the file is not one. */
export const notLessonRuns = (file: string): string =>
  `Where you are in lessons cannot be kept: ${file} is no file of this program, and is left as it is. Move it away.`;

/**
 * Keeps how far somebody has come in one lesson, and of the others what the file says now: another one may be gone through
 * at the same time, by another learner too. Gives what has to be told of it, in a sentence; null: it is kept.
 */
export function keepLessonRun(file: string, key: string, run: LessonRun): string | null {
  const others = readLessonRuns(file);
  if (others === null) {
    return notLessonRuns(file);
  }
  const writing = writeFileText(file, keptRunsText({ ...others, [key]: run }), {
    overwrite: true,
    makeFolders: true,
  });
  return writing.ok ? null : `Where you are in lessons could not be kept in ${file}: ${notWritten(writing)}.`;
}
