import { dirname, join } from 'node:path';
import { readFileText } from '../documents/read-file.ts';
import { thereAt } from '../documents/there-at.ts';
import { notWritten, writeFileText } from '../documents/write-file.ts';
import type { ClassRun } from '../teaching/lessons/class-run.ts';
import { type KeptClasses, keptClasses, keptClassesText } from '../teaching/lessons/kept-classes.ts';
import { type KeptRuns, keptRuns, keptRunsText, withDays, withRun } from '../teaching/lessons/kept-runs.ts';
import type { LessonRun } from '../teaching/lessons/run-lesson.ts';
import { usualSessionFile } from './session-file.ts';

type Env = Readonly<Record<string, string | undefined>>;

/** The file in which it is kept how far somebody has come in lessons: beside the interview. */
export const lessonRunsFile = (env: Env): string => join(dirname(usualSessionFile(env)), 'lessons.json');

/** The same for classes. */
export const classRunsFile = (env: Env): string => join(dirname(usualSessionFile(env)), 'classes.json');

const readRuns = <Kept>(file: string, read: (text: string) => Kept | null, none: Kept): Kept | null => {
  if (thereAt(file) === null) return none;
  const text = readFileText(file);
  return text.ok ? read(text.value) : null;
};

/** How far somebody has come in each lesson; null where what is there is no such file. */
export const readLessonRuns = (file: string): KeptRuns | null => readRuns(file, keptRuns, {});

/** How far classes have come; null where what is there is no such file. */
export const readClassRuns = (file: string): KeptClasses | null => readRuns(file, keptClasses, {});

/** What is said where the file is not one. */
export const notLessonRuns = (file: string): string =>
  `Where you are in lessons cannot be kept: ${file} is no file of this program, and is left as it is. Move it away.`;

/**
 * Keeps how far somebody has come in one lesson, and of the others what the file says now: another one may be gone through
 * at the same time, by another learner too. Gives what has to be told of it, in a sentence; null: it is kept.
 */
export function keepLessonRun(file: string, key: string, run: LessonRun, now = new Date()): string | null {
  const others = readLessonRuns(file);
  if (others === null) return notLessonRuns(file);
  return written(file, keptRunsText(withRun(others, key, withDays(run, others[key], dayOf(now)))));
}

/** The same of a class. */
export function keepClassRun(file: string, key: string, run: ClassRun): string | null {
  const others = readClassRuns(file);
  if (others === null) return notLessonRuns(file);
  return written(file, keptClassesText(withRun(others, key, run)));
}

function written(file: string, text: string): string | null {
  const writing = writeFileText(file, text, { overwrite: true, makeFolders: true });
  return writing.ok ? null : `Where you are in lessons could not be kept in ${file}: ${notWritten(writing)}.`;
}

/** The day of the clock on the wall. Example: '2026-11-26'. */
const dayOf = (now: Date): string =>
  [
    String(now.getFullYear()),
    String(now.getMonth() + 1).padStart(2, '0'),
    String(now.getDate()).padStart(2, '0'),
  ].join('-');
