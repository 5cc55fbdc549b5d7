import { ASSUMPTIONS, type AssumptionName } from '../../questions/assumptions.ts';
import type { Case } from '../../rules/judging/case.ts';
import type { Sense } from '../../rules/judging/check.ts';
import type { Input } from '../../rules/judging/term.ts';
import type { Definition, FormulaStep, PrintedFormula } from './printed-formula.ts';

/** How a comparison is worked out, with the inputs of the engine for its symbols. */
export interface FormulaSource {
  readonly given: Readonly<Record<string, Input>>;
  readonly definitions?: readonly Definition[];
  readonly steps: readonly FormulaStep[];
  readonly need: string;
  readonly have: string;
}

/** One line of the way. Example: step('R', 'mm', 'radius that the part sweeps', 'r + e'). */
export const step = (gives: string, unit: string, words: string, formula: string): FormulaStep => ({
  gives,
  unit,
  words,
  formula,
});

/** The formula as data for one case: each symbol with the path of its value. */
export function printedFormula(
  source: FormulaSource,
  of: Case,
  about: { readonly sense: Sense; readonly unit: string },
): PrintedFormula {
  return {
    symbols: Object.entries(source.given).map(([symbol, input]) => ({
      symbol,
      words: wordsOf(input.name),
      unit: input.unit,
      input: input.read(of).path,
    })),
    definitions: source.definitions ?? [],
    steps: source.steps,
    need: source.need,
    have: source.have,
    ...about,
  };
}

/** An assumption is told by what it means, not by its name in a file. */
const wordsOf = (name: string): string =>
  Object.hasOwn(ASSUMPTIONS, name) ? ASSUMPTIONS[name as AssumptionName].means : name;

/** The numbers of the symbols; null where one of them is not known. */
export function valuesOf({ given }: FormulaSource, of: Case): Readonly<Record<string, number>> | null {
  const values: Record<string, number> = {};
  for (const [symbol, input] of Object.entries(given)) {
    const { low, high } = input.read(of);
    if (low !== high) return null;
    values[symbol] = low;
  }
  return values;
}
