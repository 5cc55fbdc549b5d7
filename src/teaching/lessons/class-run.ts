import type { LengthUnits } from '../../quantities/kinds.ts';
import type { Changeable } from './changeable.ts';
import { type ClassPage, classPages, isBefore } from './class-pages.ts';
import {
  FULL_POINTS,
  LESSON_START,
  type LessonFeedback,
  type ReadyLesson,
  runLesson,
  stepAt,
} from './run-lesson.ts';
import { type StepTrial, tryInStep } from './what-if.ts';

/** What the room said to a step. */
interface Guess {
  /** null: it was said before the class was left */
  readonly feedback: LessonFeedback | null;
  readonly wrong: number;
  /** 0 as long as it is not right */
  readonly points: number;
}

/** How far a class has come: what it was shown and guessed is kept, what was tried is not. */
export interface ClassRun {
  /** of the steps; as many as there are: the end */
  readonly index: number;
  /** of the pages of that step */
  readonly page: number;
  /** by the index of the step; of those that nobody guessed none */
  readonly guesses: Readonly<Record<number, Guess>>;
  readonly trial: StepTrial | null;
  /** why the last event brought nothing about */
  readonly refused: string | null;
}

export type ClassEvent =
  | { readonly type: 'next' | 'back' | 'next step' | 'step before' | 'first' | 'last' | 'drop' }
  | { readonly type: 'guess'; readonly text: string; readonly units: LengthUnits }
  | { readonly type: 'try'; readonly of: Changeable; readonly typed: string; readonly units: LengthUnits };

export const CLASS_START: ClassRun = { index: 0, page: 0, guesses: {}, trial: null, refused: null };

/** The pages of the step that a class is at; before the first step the title. */
function pagesAt(ready: ReadyLesson, run: ClassRun): readonly ClassPage[] {
  const current = stepAt(ready, run);
  if (current === null) return [{ kind: 'end' }];
  const pages = classPages(current.step, run.trial?.key ?? current.key);
  return run.index === 0 ? [{ kind: 'title' }, ...pages] : pages;
}

/** What is shown now. */
export function pageAt(ready: ReadyLesson, run: ClassRun): ClassPage {
  const pages = pagesAt(ready, run);
  return pages[Math.min(run.page, pages.length - 1)] ?? { kind: 'end' };
}

/** The class after an event. Pure; what is tried is decided anew on the rows of the catalog that the lesson names. */
export function runClass(ready: ReadyLesson, run: ClassRun, event: ClassEvent): ClassRun {
  const now = { ...run, refused: null };
  const last = ready.keys.length;
  switch (event.type) {
    case 'next':
      return run.page + 1 < pagesAt(ready, run).length
        ? { ...now, page: run.page + 1 }
        : toStep(run, run.index + 1, last);
    case 'back':
      return run.page > 0 ? { ...now, page: run.page - 1 } : toEndOf(ready, run, run.index - 1);
    case 'next step':
      return toStep(run, run.index + 1, last);
    case 'step before':
      return toStep(run, run.index - 1, last);
    case 'first':
      return { ...now, page: 0 };
    case 'last':
      return { ...now, page: pagesAt(ready, run).length - 1 };
    case 'drop':
      return dropped(ready, now);
    case 'guess':
      return guessed(ready, now, event);
    case 'try': {
      const tried = tryInStep(ready, run.index, run.trial?.changes ?? [], event);
      return tried.ok ? { ...now, trial: tried.trial } : { ...now, refused: tried.why };
    }
  }
}

/** Another step begins with its question, and without what was tried. */
const toStep = (run: ClassRun, index: number, last: number): ClassRun =>
  index < 0 || index > last
    ? { ...run, refused: null }
    : { ...run, index, page: 0, trial: null, refused: null };

function toEndOf(ready: ReadyLesson, run: ClassRun, index: number): ClassRun {
  const there = toStep(run, index, ready.keys.length);
  return there.index === run.index ? there : { ...there, page: pagesAt(ready, there).length - 1 };
}

/** Without what is tried the way may have fewer lines. */
function dropped(ready: ReadyLesson, run: ClassRun): ClassRun {
  const plain = { ...run, trial: null };
  return { ...plain, page: Math.min(run.page, pagesAt(ready, plain).length - 1) };
}

function guessed(
  ready: ReadyLesson,
  run: ClassRun,
  { text, units }: Extract<ClassEvent, { type: 'guess' }>,
): ClassRun {
  const { index } = run;
  if (run.trial !== null) return { ...run, refused: 'Drop what is tried before the room guesses.' };
  if (!isBefore(pageAt(ready, run)))
    return { ...run, refused: 'The way is shown already: go back to guess.' };
  const before = run.guesses[index];
  if (before !== undefined && before.points > 0) return { ...run, refused: 'The room was right already.' };
  const hints = pagesAt(ready, run)
    .slice(0, run.page + 1)
    .filter(({ kind }) => kind === 'hint').length;
  const at = { ...LESSON_START, index, hints, wrong: before?.wrong ?? 0 };
  const { feedback, wrong, scores } = runLesson(ready, at, { type: 'predict', text, units });
  if (feedback === null || feedback.kind === 'unreadable')
    return { ...run, refused: feedback === null ? 'There is nothing to guess here.' : feedback.why };
  const guess: Guess = { feedback, wrong, points: scores[0] ?? 0 };
  return { ...run, guesses: { ...run.guesses, [index]: guess } };
}

/** Points of the steps to which the room said something; null: it said nothing, and nothing is counted. */
export function classScore({ guesses }: ClassRun): { readonly points: number; readonly of: number } | null {
  const all = Object.values(guesses);
  if (all.length === 0) return null;
  return { points: all.reduce((sum, { points }) => sum + points, 0), of: all.length * FULL_POINTS };
}
