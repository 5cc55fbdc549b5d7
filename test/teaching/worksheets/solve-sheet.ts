import { workOut } from '../../../src/teaching/formula/work-out.ts';
import { LESSON_START, type ReadyLesson, runLesson } from '../../../src/teaching/lessons/run-lesson.ts';
import type { ReadSheet, ReadStep } from './read-sheet.ts';

type Formula = Parameters<typeof workOut>[0];

/** Works formulas out from given numbers, name by name. */
export type Calculator = (
  formula: Pick<Formula, 'definitions' | 'steps' | 'need' | 'have'>,
  given: Readonly<Record<string, number>>,
) => { readonly need: number; readonly have: number };

/** The program's own. */
const OWN: Calculator = (formula, given) => workOut({ ...formula, sense: 'at-most' }, given);

/** So little is noise of the last digit that is printed. */
const SAME = 1e-6;

/** What somebody comes to who has the sheet and a calculator; null: nothing is worked out in this step. */
export function solved(step: ReadStep, { given }: ReadSheet, calculator: Calculator = OWN): string | null {
  const values = Object.fromEntries(
    Object.entries(step.symbols).map(([symbol, label]) => {
      const value = given[label];
      if (value === undefined) throw new Error(`${symbol}: nothing is given under ${label}`);
      return [symbol, value];
    }),
  );
  if (step.asked !== null) {
    const { need } = calculator({ ...step, need: step.asked, have: step.asked }, values);
    return String(Number(need.toPrecision(6)));
  }
  const [, need, sign, have] = /^(\w+) ([≤≥]) (\w+)$/.exec(step.rule ?? '') ?? [];
  if (need === undefined || have === undefined) return null;
  const found = calculator({ ...step, need, have }, values);
  const left = sign === '≤' ? found.have - found.need : found.need - found.have;
  if (left >= -SAME * Math.max(1, Math.abs(found.need))) return 'holds';
  return step.text.includes('it holds if it is done') ? 'holds if' : 'fails';
}

/** Whether what somebody comes to is right, by the rules of the lesson itself. */
export const isRight = (ready: ReadyLesson, index: number, text: string): boolean =>
  runLesson(ready, { ...LESSON_START, index }, { type: 'predict', text, units: 'mm' }).feedback?.kind ===
  'right';
