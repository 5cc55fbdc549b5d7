import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { catalogFiles, readCatalog } from '../catalog/read.ts';
import { nearest } from '../documents/nearest.ts';
import { describeProblem } from '../documents/problem.ts';
import { readLesson } from '../teaching/lessons/read-lesson.ts';
import type { ReadyLesson } from '../teaching/lessons/run-lesson.ts';
import { prepareLesson } from '../teaching/lessons/step-key.ts';
import { demoCatalog } from './demo-catalog.ts';
import { type LessonFor, variantsOf } from './lesson-sheets.ts';

/** A lesson or an exercise that is ready to be gone through; or what is in its way, line by line. */
export type Opened =
  | {
      readonly ok: true;
      /** under which it is kept */
      readonly name: string;
      /** what it is called on paper */
      readonly paper: string;
      readonly ready: ReadyLesson;
      /** of an exercise: which one it is, and how to draw it once more */
      readonly seed: number | null;
      readonly again: string | null;
      /** the same with the numbers of another seed; null: as it is written */
      readonly another: LessonFor;
      /** files that it was made of */
      readonly inputs: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly string[] };

const lessonsFolder = (): string => join(demoCatalog(), 'lessons');

/** Names of the lessons that come with the program. */
export const lessonNames = (): readonly string[] =>
  readdirSync(lessonsFolder())
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.slice(0, -'.yaml'.length))
    .sort();

/** The file of a lesson that comes with the program. */
export const fileOfLesson = (name: string): string => join(lessonsFolder(), `${name}.yaml`);

/** A file of one's own, or a lesson of the program by its name; null: there is none. */
function fileOf(name: string): string | null {
  if (/[\\/.]/.test(name)) return name;
  const file = fileOfLesson(name);
  return existsSync(file) ? file : null;
}

/** Reads a lesson, by its name or a file of one's own, and works out what its steps come to; `given`: folders of a catalog, the demo's where there are none. */
export function openLesson(name: string, given: readonly string[]): Opened {
  const refuse = (problems: readonly string[]): Opened => ({ ok: false, problems });
  const file = fileOf(name);
  if (file === null) {
    const meant = nearest(name, lessonNames());
    const hint = meant === undefined ? '' : ` (did you mean ${meant}?)`;
    return refuse([`fivesides: there is no lesson "${name}"${hint}; fivesides lesson lists all.`]);
  }
  const folders = given.length === 0 ? [demoCatalog()] : given;
  const catalog = readCatalog(folders);
  const lesson = readLesson(file);
  if (!catalog.ok || !lesson.ok)
    return refuse([catalog, lesson].flatMap((each) => (each.ok ? [] : each.problems)).map(describeProblem));
  const ready = prepareLesson(lesson.value, catalog.value);
  if (!ready.ok) return refuse(ready.faults.map((fault) => `${file}: ${fault}`));
  return {
    ok: true,
    name,
    paper: name,
    ready,
    seed: null,
    again: null,
    another: variantsOf(ready, lesson.value, catalog.value),
    inputs: [file, ...folders.flatMap(catalogFiles)],
  };
}
