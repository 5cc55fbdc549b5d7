import type { LengthUnits } from '../../quantities/kinds.ts';
import type { ReadyLesson } from '../lessons/run-lesson.ts';
import { type GivenGroup, givenGroups, type StepGiven } from './given-lines.ts';
import type { SheetFormula } from './sheet-formula.ts';
import { arrangementOf, stepFormulas } from './step-formula.ts';

/** How a sheet is called, and how its numbers are shown. */
export interface SheetOptions {
  /** of the lesson or exercise: with the seed it finds the key again */
  readonly name: string;
  /** null: as it is written */
  readonly seed: number | null;
  readonly units: LengthUnits;
}

/** A lesson laid out for paper: what is given, and how each step is worked out from it. */
export interface Sheet {
  readonly ready: ReadyLesson;
  readonly options: SheetOptions;
  readonly groups: readonly GivenGroup[];
  /** of each step; null: it is thought through, not worked out */
  readonly formulas: readonly (SheetFormula | null)[];
  readonly currency: string;
}

/** Lays a lesson out for paper. */
export function sheetOf(ready: ReadyLesson, options: SheetOptions): Sheet {
  const { lesson, decision } = ready;
  const formulas = stepFormulas(ready);
  const steps = formulas.flatMap((formula, index): readonly StepGiven[] =>
    formula === null ? [] : [{ formula, arrangement: arrangementId(ready, index) }],
  );
  // what is thought through is about the whole mix
  const parts = formulas.includes(null) ? lesson.answers.parts.map(({ name }) => name) : [];
  const arrangements = lesson.steps.flatMap((_, index) => arrangementOf(ready, index) ?? []);
  const also = [
    ...parts.map((id) => ({ kind: 'part' as const, id })),
    ...arrangements.map(({ id }) => ({ kind: 'arrangement' as const, id })),
  ];
  const { currency } = lesson.answers;
  const named = currency === 'unknown' ? decision.inputs.catalog.currency : currency;
  return {
    ready,
    options,
    formulas,
    groups: givenGroups(steps, also),
    currency: named === 'unknown' ? '' : named,
  };
}

/** The arrangement that a step of a sheet is about, by its id. */
export const arrangementId = ({ lesson }: ReadyLesson, index: number): string =>
  lesson.steps[index]?.on ?? lesson.on;
