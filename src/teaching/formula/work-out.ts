import { evaluate } from './evaluate.ts';
import type { FormulaStep, GivenNumber, PrintedFormula } from './printed-formula.ts';
import { writeFormula } from './write-formula.ts';

/** A step with its numbers put in, and what it comes to. */
export interface WorkedStep extends FormulaStep {
  readonly putIn: string;
  readonly value: number;
}

/** Everything that a formula gives for given numbers. */
export interface Worked {
  readonly steps: readonly WorkedStep[];
  readonly need: number;
  readonly have: number;
  /** positive is always good */
  readonly margin: number;
}

/** The symbols of a formula, each with its number. */
export const givenNumbers = (
  { symbols }: Pick<PrintedFormula, 'symbols'>,
  values: Readonly<Record<string, number>>,
): readonly GivenNumber[] => symbols.map((each) => ({ ...each, value: values[each.symbol] ?? Number.NaN }));

/** Works a printed formula out for given numbers, line by line. Throws where a symbol has no number. */
export function workOut(
  {
    definitions,
    steps,
    need,
    have,
    sense,
  }: Pick<PrintedFormula, 'definitions' | 'steps' | 'need' | 'have' | 'sense'>,
  given: Readonly<Record<string, number>>,
): Worked {
  const values: Record<string, number> = { ...given };
  const worked = steps.map((each): WorkedStep => {
    const putIn = writeFormula(each.formula, values);
    const value = evaluate(each.formula, { values, definitions });
    values[each.gives] = value;
    return { ...each, putIn, value };
  });
  const [needed, there] = [values[need], values[have]];
  if (needed === undefined || there === undefined) throw new RangeError(`no step gives ${need} or ${have}`);
  return {
    steps: worked,
    need: needed,
    have: there,
    margin: sense === 'at-most' ? there - needed : needed - there,
  };
}
