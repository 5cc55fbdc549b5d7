import type { Catalog } from '../../catalog/catalog.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { GivenNumber } from '../formula/printed-formula.ts';
import type { Lesson } from '../lessons/lesson.ts';
import type { DrawnKey } from './drawn-answers.ts';
import type { Level, Side } from './recipe.ts';

/** A lesson that was drawn: one rule decides it. */
export interface Exercise {
  readonly about: string;
  readonly seed: number;
  readonly level: Level;
  /** the check that decides */
  readonly check: CheckId;
  /** yes: it holds, speaks, or is needed */
  readonly side: Side;
  /** how far from the line, as a share of the larger of both numbers; null: there is no near */
  readonly share: number | null;
  /** the answer that was moved to get there; null: what was drawn does it */
  readonly moved: DrawnKey | null;
  readonly lesson: Lesson;
  /** the rows that it is about; its lesson is prepared on them */
  readonly catalog: Catalog;
  /** what is given for the rule that decides, and what its formula comes to */
  readonly given: readonly GivenNumber[];
}

/** An exercise, or why there is none. */
export type MadeExercise =
  | { readonly ok: true; readonly exercise: Exercise }
  | { readonly ok: false; readonly why: string };
