import type { Class } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import type { ClassRuleId } from '../../rules/classes/rule-ids.ts';
import type { Measures } from '../../rules/decision.ts';
import type { FeatureId } from '../../rules/features/ids.ts';

/** Which number or word a step asks for. What it comes to is worked out, never typed. */
export type Asked =
  /** the need, the have or the margin of a check, as a number */
  | {
      readonly kind: 'number';
      readonly check: CheckId;
      readonly part: string | null;
      readonly side: 'need' | 'have' | 'margin';
    }
  /** the verdict of a check */
  | { readonly kind: 'verdict'; readonly check: CheckId; readonly part: string | null }
  /** what is found about a kind of rotary */
  | { readonly kind: 'class'; readonly class: Class }
  /** what a rule says of a kind of rotary */
  | { readonly kind: 'rule'; readonly rule: ClassRuleId; readonly class: Class }
  /** a number on the way of that rule, by its name there */
  | {
      readonly kind: 'rule number';
      readonly rule: ClassRuleId;
      readonly class: Class;
      readonly gives: string;
    }
  /** how much a feature is needed */
  | { readonly kind: 'feature'; readonly feature: FeatureId }
  /** a number on the way to that */
  | { readonly kind: 'feature number'; readonly feature: FeatureId; readonly gives: string }
  /** a measure of the arrangement, as a number */
  | { readonly kind: 'measure'; readonly measure: keyof Measures };

/** One step of a lesson: predict, reveal, why. */
export interface LessonStep {
  readonly ask: string;
  readonly asked: Asked;
  /** an arrangement by its id; null: that of the lesson */
  readonly on: string | null;
  /** of numbers, in percent of what comes out */
  readonly tolerance: number;
  /** each costs points */
  readonly hints: readonly string[];
  readonly why: string;
}

/** A lesson as a trainer writes it. */
export interface Lesson {
  readonly title: string;
  readonly about: string;
  readonly answers: Answers;
  /** ids of the catalog that the lesson is about; empty: all */
  readonly machines: readonly string[];
  readonly rotaries: readonly string[];
  /** the arrangement that its steps are about */
  readonly on: string;
  readonly steps: readonly LessonStep[];
}
