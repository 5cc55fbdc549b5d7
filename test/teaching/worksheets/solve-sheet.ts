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
export function solved(step: ReadStep, sheet: ReadSheet, calculator: Calculator = OWN): string | null {
  const values = Object.fromEntries(
    Object.entries(step.symbols).map(([symbol, label]) => {
      const value = valueUnder(label, sheet, calculator);
      if (value === undefined) throw new Error(`${symbol}: nothing is given under ${label}`);
      return [symbol, value];
    }),
  );
  if (step.findings.length > 0) return findingOf(step, values, calculator);
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

/** What is given under a label; what came out of the steps that are named instead, a verdict as 1 or 0, the least of several. */
function valueUnder(label: string, sheet: ReadSheet, calculator: Calculator): number | undefined {
  const [, steps] = /^steps? ([\d, ]+)$/.exec(label) ?? [];
  if (steps === undefined) return sheet.given[label];
  const all = steps.split(', ').map((number) => {
    const step = sheet.steps.find((each) => each.number === Number(number));
    const text = step === undefined ? null : solved(step, sheet, calculator);
    return text === 'fails' ? 0 : text === 'holds' || text === 'holds if' ? 1 : Number(text);
  });
  return Math.min(...all);
}

/** The first finding of which one rule is so; the last has none. */
function findingOf(
  { findings, steps, definitions }: ReadStep,
  values: Readonly<Record<string, number>>,
  calculator: Calculator,
): string | null {
  const isSo = (rule: string): boolean => {
    const line = { gives: 'so', words: '', unit: '', formula: `if(${rule}, 1, 0)` };
    return calculator({ definitions, steps: [...steps, line], need: 'so', have: 'so' }, values).need === 1;
  };
  return (
    findings.find(({ rules }, index) => index === findings.length - 1 || rules.some(isSo))?.comesTo ?? null
  );
}

/** Whether what somebody comes to is right, by the rules of the lesson itself. */
export const isRight = (ready: ReadyLesson, index: number, text: string): boolean =>
  runLesson(ready, { ...LESSON_START, index }, { type: 'predict', text, units: 'mm' }).feedback?.kind ===
  'right';
