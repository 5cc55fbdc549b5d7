import type { Definition, FormulaStep, GivenNumber, PrintedFormula } from '../formula/printed-formula.ts';
import { usedFor } from '../formula/used-for.ts';
import { type Worked, workOut } from '../formula/work-out.ts';
import type { ChoiceCase, Choices } from '../rules/choices.ts';

/** How a step of a sheet is worked out: given numbers, lines, and what they are for. */
export interface SheetFormula {
  readonly symbols: readonly GivenNumber[];
  readonly definitions: readonly Definition[];
  readonly steps: readonly FormulaStep[];
  /** what is asked for, by its name: a step or a given number; empty where a finding is asked for */
  readonly asked: string;
  readonly unit: string;
  /** what is held against each other, where a verdict is asked for */
  readonly compared: Pick<PrintedFormula, 'need' | 'have' | 'sense'> | null;
  /** symbols that are not given but come from other steps, numbered from 1 */
  readonly from?: Readonly<Record<string, readonly number[]>>;
  /** what is found of a kind, the first that is so; else it suits */
  readonly findings?: readonly ChoiceCase[];
  /** which word is the answer, worked out from the lines */
  readonly choices?: Choices;
}

/** The lines that lead to some names, and nothing else of a formula. Names that stand for nothing are left out. */
export function leadingTo(formula: SheetFormula, names: readonly string[]): SheetFormula {
  const used = usedFor(formula, names);
  return {
    ...formula,
    symbols: formula.symbols.filter(({ symbol }) => used.has(symbol)),
    definitions: formula.definitions.filter(({ name }) => used.has(name)),
    steps: formula.steps.filter(({ gives }) => used.has(gives)),
  };
}

/** Puts lines in place of a given number, before all others. */
export const withLinesFor = (
  formula: SheetFormula,
  symbol: string,
  { symbols, steps }: Pick<SheetFormula, 'symbols' | 'steps'>,
): SheetFormula => ({
  ...formula,
  symbols: [
    ...formula.symbols.filter((each) => each.symbol !== symbol),
    ...symbols.filter((each) => formula.symbols.every((other) => other.symbol !== each.symbol)),
  ],
  steps: [...steps, ...formula.steps],
});

/** The numbers of the symbols, by their names. */
export const valuesIn = ({ symbols }: Pick<SheetFormula, 'symbols'>): Readonly<Record<string, number>> =>
  Object.fromEntries(symbols.map(({ symbol, value }) => [symbol, value]));

/** Works a step out: need and have are what is asked for. Throws where a name stands for nothing. */
export const workedSheet = (
  { definitions, steps, asked }: Pick<SheetFormula, 'definitions' | 'steps' | 'asked'>,
  values: Readonly<Record<string, number>>,
): Worked => workOut({ definitions, steps, need: asked, have: asked, sense: 'at-most' }, values);

/** Given numbers and lines; null where one of the numbers is not known. */
export type Lines = Pick<SheetFormula, 'symbols' | 'steps'> | null;

/** Given numbers, all of them; null where one is not known. */
export function known(
  given: readonly (Omit<GivenNumber, 'value'> & { readonly value: unknown })[],
): readonly GivenNumber[] | null {
  const plain = given.flatMap((each) =>
    typeof each.value === 'number' ? [{ ...each, value: each.value }] : [],
  );
  return plain.length === given.length ? plain : null;
}
