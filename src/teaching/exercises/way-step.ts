import type { PrintedFormula } from '../formula/printed-formula.ts';
import type { Asked, LessonStep } from '../lessons/lesson.ts';
import { wayHints } from './way-hints.ts';

/** A number is right within so many percent. */
export const TOLERANCE = 1;

/** A step that asks for a number on the way of a rule. */
export const wayStep = ({
  words,
  unit,
  asked,
  formula,
  gives,
  why,
}: {
  readonly words: string;
  readonly unit: string;
  readonly asked: Asked;
  readonly formula: PrintedFormula;
  /** its name there */
  readonly gives: string;
  readonly why: string;
}): LessonStep => ({
  ask: `${words}: how much is that${inUnit(unit)}?`,
  asked,
  on: null,
  tolerance: TOLERANCE,
  hints: wayHints(formula, gives),
  why,
});

const inUnit = (unit: string): string =>
  unit === '' || unit === 'money' ? '' : unit === 'share' ? ', as a share of one' : `, in ${unit}`;
