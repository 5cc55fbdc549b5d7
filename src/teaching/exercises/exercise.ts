import type { Catalog } from '../../catalog/catalog.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { WorkedCheck } from '../examples/worked-check.ts';
import type { Lesson } from '../lessons/lesson.ts';
import type { DrawnKey } from './drawn-answers.ts';
import type { Level, Side } from './recipe.ts';

/** A number that is given for an exercise, as its sheet prints it. */
export interface GivenNumber {
  /** the letter that stands for it in the printed formula */
  readonly symbol: string;
  /** where it stands: `parts[Hinge block].eccentricity` */
  readonly path: string;
  readonly value: number;
  readonly unit: string;
}

/** A lesson that was drawn: one rule decides it. */
export interface Exercise {
  readonly about: string;
  readonly seed: number;
  readonly level: Level;
  /** the check that decides, where one does */
  readonly check: CheckId | null;
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

/** The numbers that a worked check is given. */
export const givenOf = (worked: WorkedCheck | null): readonly GivenNumber[] =>
  worked === null
    ? []
    : worked.formula.symbols.map(({ symbol, input, unit }) => ({
        symbol,
        path: input,
        value: worked.values[symbol] ?? Number.NaN,
        unit,
      }));
