import { randomInt } from 'node:crypto';
import type { Catalog } from '../catalog/catalog.ts';
import { catalogFiles, readCatalog } from '../catalog/read.ts';
import { describeProblem } from '../documents/problem.ts';
import { makeExercise } from '../teaching/exercises/make-exercise.ts';
import { LEVELS, type Level } from '../teaching/exercises/recipe.ts';
import { exerciseName } from '../teaching/lessons/exercise-key.ts';
import { prepareLesson } from '../teaching/lessons/step-key.ts';
import { demoCatalog } from './demo-catalog.ts';
import { type LessonFor, sheetNumbers } from './lesson-sheets.ts';
import type { Opened } from './open-lesson.ts';

export interface PracticeOptions {
  /** what the exercise is about */
  readonly practice?: string;
  /** a whole number; left out: any */
  readonly seed?: string;
  /** 1 to 3; left out: 1 */
  readonly level?: string;
  /** so many exercises on paper */
  readonly variants?: string;
  readonly catalog?: readonly string[];
}

/** Without a seed one of so many is drawn: short ones are soon typed again. */
const MOST_DRAWN = 10_000;

/** Draws the exercise that the options ask for. Without a seed any is taken; `again` says how to draw the same once more. */
export function openPractice({
  practice = '',
  seed,
  level = '1',
  variants,
  catalog = [],
}: PracticeOptions): Opened {
  const refuse = (...problems: readonly string[]): Opened => ({ ok: false, problems });
  const numbers = sheetNumbers({
    ...(seed === undefined ? {} : { seed }),
    ...(variants === undefined ? {} : { variants }),
  });
  if (!numbers.ok) return refuse(numbers.why);
  const number = numbers.value.seed ?? randomInt(1, MOST_DRAWN);
  const wanted = LEVELS.find((each) => String(each) === level);
  if (wanted === undefined)
    return refuse(
      `fivesides: "${level}" is no level: ${LEVELS.join(', ')}; the last is nearest to the line.`,
    );
  const folders = catalog.length === 0 ? [demoCatalog()] : catalog;
  const rows = readCatalog(folders);
  if (!rows.ok) return refuse(...rows.problems.map(describeProblem));
  const another = exerciseFor(practice, wanted, rows.value);
  const first = another(number);
  if (!first.ok) return refuse(`fivesides: ${first.why}`);
  return {
    ok: true,
    name: exerciseName(practice, number, wanted),
    paper: `${practice}, level ${wanted}`,
    ready: first.ready,
    seed: number,
    again: `The same again: fivesides lesson --practice ${practice} --seed ${number} --level ${wanted}`,
    another: (of) => (of === number ? first : another(of)),
    inputs: folders.flatMap(catalogFiles),
  };
}

/** Exercises about one thing, by their seeds. */
const exerciseFor =
  (about: string, level: Level, catalog: Catalog): LessonFor =>
  (seed) => {
    const made = makeExercise(about, { seed: seed ?? 0, level, catalog });
    if (!made.ok) return { ok: false, why: `${made.why}.` };
    const ready = prepareLesson(made.exercise.lesson, made.exercise.catalog);
    return ready.ok
      ? { ok: true, ready }
      : { ok: false, why: `exercise ${seed} cannot be worked out: ${ready.faults.join('; ')}.` };
  };
