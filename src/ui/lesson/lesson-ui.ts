import type { LengthUnits } from '../../quantities/kinds.ts';
import type { Changeable } from '../../teaching/lessons/changeable.ts';
import type { ClassRun } from '../../teaching/lessons/class-run.ts';
import type { LessonFeedback, LessonRun, ReadyLesson } from '../../teaching/lessons/run-lesson.ts';
import { NOTHING_TYPED, type TextField } from '../keys/text-field.ts';

/** A lesson in the list of all. */
export interface ListedLesson {
  readonly name: string;
  readonly title: string;
  /** how far somebody has come, in words; empty: it is not begun */
  readonly reached: string;
}

/** What lies over the screen for a moment. */
export type LessonOver =
  | { readonly kind: 'help' }
  /** everything that can be explained; and one of it, by its name */
  | { readonly kind: 'explain' }
  | { readonly kind: 'explained'; readonly topic: string; readonly behind: LessonOver | null }
  /** what the room says */
  | { readonly kind: 'guess' }
  /** the given numbers, to try one otherwise; and the one that is tried */
  | { readonly kind: 'changes' }
  | { readonly kind: 'change'; readonly of: Changeable }
  /** what comes out of what is tried */
  | { readonly kind: 'tried' }
  /** Ctrl-C was pressed once, over this */
  | { readonly kind: 'leave'; readonly under: LessonOver | null };

/** Somebody learns alone, and is given points. */
export interface Alone {
  readonly how: 'alone';
  readonly run: LessonRun;
  /** an earlier step that is read again, by its index; null: none */
  readonly looked: number | null;
  /** what was wrong in this step, and what it would have been right for */
  readonly wrong: readonly LessonFeedback[];
}

/** A trainer shows it to a class. */
export interface ForClass {
  readonly how: 'class';
  readonly run: ClassRun;
}

export interface OpenedLesson {
  /** as it was asked for */
  readonly name: string;
  readonly ready: ReadyLesson;
  readonly goes: Alone | ForClass;
}

/** What is to be worked out before the next key counts. */
type LessonWork =
  | { readonly kind: 'open'; readonly name: string }
  | { readonly kind: 'try'; readonly of: Changeable; readonly typed: string };

/** All that the screen of lessons shows, as data. */
export interface LessonUi {
  /** null: a lesson was named, and there is no list to go back to */
  readonly list: readonly ListedLesson[] | null;
  readonly opened: OpenedLesson | null;
  /** of numbers without a unit, and of those that are shown */
  readonly units: LengthUnits;
  readonly over: LessonOver | null;
  readonly field: TextField;
  /** the row of the list that is highlighted */
  readonly mark: number;
  /** rows of a long text that are scrolled past */
  readonly scroll: number;
  readonly said: string | null;
  readonly work: LessonWork | null;
}

/** What a key asks the shell for. */
export type LessonRequest =
  | { readonly kind: 'keep'; readonly name: string; readonly run: LessonRun }
  | { readonly kind: 'keep class'; readonly name: string; readonly run: ClassRun }
  /** how far every lesson is, now */
  | { readonly kind: 'list' }
  | { readonly kind: 'leave'; readonly how: 'quit' | 'interrupted' }
  | { readonly kind: 'suspend' }
  | { readonly kind: 'repaint' };

export type LessonTurn = readonly [LessonUi, readonly LessonRequest[]];

/** With a list to choose from, or with a lesson that was named. */
export const lessonBeginning = (
  list: readonly ListedLesson[] | null,
  opened: OpenedLesson | null,
  units: LengthUnits,
): LessonUi => ({
  list,
  opened,
  units,
  over: null,
  field: NOTHING_TYPED,
  mark: 0,
  scroll: 0,
  said: null,
  work: null,
});

/** The same with nothing typed and nothing scrolled: another page. */
export const turned = (ui: LessonUi, to: Partial<LessonUi>): LessonUi => ({
  ...ui,
  field: NOTHING_TYPED,
  mark: 0,
  scroll: 0,
  said: null,
  ...to,
});

/** What Ctrl-C was pressed over stays as it is. */
export const belowLeaving = (ui: LessonUi): LessonUi =>
  ui.over?.kind === 'leave' ? { ...ui, over: ui.over.under } : ui;
