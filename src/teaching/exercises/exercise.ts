import type { Catalog, Class } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import type { FeatureId } from '../../rules/features/ids.ts';
import type { GivenNumber } from '../formula/printed-formula.ts';
import type { Lesson } from '../lessons/lesson.ts';
import type { DrawnKey } from './drawn-answers.ts';
import type { Level, Side } from './recipe.ts';
import type { Decides } from './rule-recipe.ts';

/** What decides an exercise: a check, a rule of the class about a kind of rotary, or a rule of a feature. */
type Deciding =
  | { readonly rule: 'check'; readonly id: CheckId }
  | {
      readonly rule: 'class rule';
      readonly id: ClassRuleId;
      readonly class: Class;
      /** what hangs on it: what is found of the kind, or what the rule says alone */
      readonly what: Decides;
    }
  | { readonly rule: 'feature'; readonly id: FeatureId };

/** A lesson that was drawn: one rule decides it. */
export interface Exercise {
  readonly about: string;
  readonly seed: number;
  readonly level: Level;
  /** what decides */
  readonly decides: Deciding;
  /** yes: it holds, speaks, or is needed */
  readonly side: Side;
  /** how far from the line, as a share of the larger of both numbers; null: there is no near */
  readonly share: number | null;
  /** the answer that was moved to get there; null: what was drawn does it */
  readonly moved: DrawnKey | null;
  /** answers with one number moved over the line, on which the rule says the opposite; null: it decides by itself, or no number moves it */
  readonly across: Answers | null;
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

/** Where the catalog has nothing for it. Example of `what`: 'for a whole case'. */
export const noneFound = (what: string, level: Level): MadeExercise => ({
  ok: false,
  why: `no machine and rotary of the catalog was found ${what} at level ${level}: another seed or level may find one, and a catalog with more rows does`,
});
