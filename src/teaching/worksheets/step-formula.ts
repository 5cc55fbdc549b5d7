import type { Arrangement } from '../../rules/decision.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import { step } from '../formula/formula-source.ts';
import { givenNumbers } from '../formula/work-out.ts';
import type { ReadyLesson } from '../lessons/run-lesson.ts';
import type { StepKey } from '../lessons/step-key.ts';
import { tiltLines } from '../pieces/tilt-lines.ts';
import { stepsThatHold } from './from-steps.ts';
import { kindFormula } from './kind-formula.ts';
import { capitalLines, measureFormula } from './measure-formula.ts';
import { type Lines, leadingTo, type SheetFormula, withLinesFor } from './sheet-formula.ts';

/** What stands between need and have, where that is asked for. */
const MARGIN = 'margin';

/** The arrangement that a step is about; undefined: the decision does not list it. */
export const arrangementOf = (ready: ReadyLesson, index: number): Arrangement | undefined => {
  const id = ready.lesson.steps[index]?.on ?? ready.lesson.on;
  return ready.decision.arrangements.find((each) => each.id === id);
};

/**
 * How each step of a lesson is worked out from what can be given; null for a step that is thought through. A number that a step
 * asks for is given in no other step: where one of them needs it, its own lines stand there.
 */
export function stepFormulas(ready: ReadyLesson): readonly (SheetFormula | null)[] {
  const { steps } = ready.lesson;
  const whole = ready.keys.map((key, index) => wholeFormula(ready, key, index));
  const askedPaths = new Set(
    whole.flatMap((formula, index) => {
      if (formula === null || steps[index]?.asked.kind === 'verdict') return [];
      return formula.symbols.filter(({ symbol }) => symbol === formula.asked).map(({ input }) => input);
    }),
  );
  return whole.map((formula, index) => {
    if (formula === null) return null;
    const { compared, asked, findings, choices } = formula;
    if (findings !== undefined || choices !== undefined) return formula;
    const opened = formula.symbols
      .filter(({ input }) => askedPaths.has(input))
      .reduce((before, symbol) => {
        const lines = linesFor(symbol.input, symbol.symbol, ready, index);
        return lines === null ? before : withLinesFor(before, symbol.symbol, lines);
      }, formula);
    return leadingTo(opened, compared === null ? [asked] : [compared.need, compared.have, MARGIN]);
  });
}

function wholeFormula(ready: ReadyLesson, key: StepKey, index: number): SheetFormula | null {
  const asked = ready.lesson.steps[index]?.asked;
  if (asked?.kind === 'measure') {
    const arrangement = arrangementOf(ready, index);
    const formula =
      arrangement === undefined ? null : measureFormula(asked.measure, arrangement, ready.decision);
    return formula === null ? null : withHeldFrom(formula, ready, arrangement?.id ?? '');
  }
  if (asked?.kind === 'class') return kindFormula(asked.class, ready);
  if (key.worked === null || asked === undefined) return null;
  switch (asked.kind) {
    case 'number':
      return checkFormula(key.worked, asked.side);
    case 'verdict':
      return checkFormula(key.worked, 'verdict');
    case 'rule number':
    case 'feature number':
    case 'rule':
    case 'feature':
      return ruleFormula(key);
  }
}

/** A number on the way of a rule, or which word it comes to. */
function ruleFormula({ kind, worked }: StepKey): SheetFormula | null {
  if (worked === null) return null;
  const { formula, values, choices } = worked;
  const { definitions, steps, need, unit } = formula;
  const whole = {
    symbols: givenNumbers(formula, values),
    definitions,
    steps,
    asked: need,
    unit,
    compared: null,
  };
  return kind === 'number' || choices === undefined ? whole : { ...whole, choices };
}

/** Whether a part is held is not given where steps ask for its verdicts: it comes from them. */
function withHeldFrom(formula: SheetFormula, ready: ReadyLesson, on: string): SheetFormula {
  const from = formula.symbols.flatMap(({ symbol, input, value }) => {
    const [, part] = /^parts\[(.*)\]\.held$/s.exec(input) ?? [];
    const steps = part === undefined ? [] : stepsThatHold(ready, part, on, value);
    return steps.length === 0 ? [] : [[symbol, steps] as const];
  });
  return { ...formula, from: Object.fromEntries(from) };
}

function checkFormula(
  { formula, values }: WorkedWay,
  asked: 'need' | 'have' | 'margin' | 'verdict',
): SheetFormula {
  const { definitions, steps, need, have, sense, unit } = formula;
  const left = sense === 'at-most' ? `${have} - ${need}` : `${need} - ${have}`;
  const withMargin = [...steps, step(MARGIN, unit, 'what is left', left)];
  return {
    symbols: givenNumbers(formula, values),
    definitions,
    steps: withMargin,
    asked: asked === 'need' || asked === 'have' ? formula[asked] : MARGIN,
    unit,
    compared: asked === 'verdict' ? { need, have, sense } : null,
  };
}

/** The lines to a number that is otherwise given; null: it can only be given. */
function linesFor(input: string, symbol: string, ready: ReadyLesson, index: number): Lines {
  if (input === 'capital') {
    const arrangement = arrangementOf(ready, index);
    return arrangement === undefined ? null : capitalLines(arrangement, symbol);
  }
  const part = ready.lesson.answers.parts.find(({ name }) => input === `parts[${name}].tilt`);
  return part === undefined ? null : tiltLines(part, symbol);
}
