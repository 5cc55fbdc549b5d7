import { known, type Value } from '../../rules/judging/value.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import { step } from '../formula/formula-source.ts';
import type { Definition, FormulaStep, GivenNumber, PrintedFormula } from '../formula/printed-formula.ts';
import { tokensOf } from '../formula/tokens.ts';
import { usedFor } from '../formula/used-for.ts';
import { givenNumbers, workOut } from '../formula/work-out.ts';

/** A stretch of the way to the number or the line of a rule, with its numbers. */
export interface Stretch {
  readonly given: readonly GivenNumber[];
  readonly steps: readonly FormulaStep[];
  readonly definitions?: readonly Definition[];
}

/** A given number of the engine; not a number where it is not known. */
export const given = (
  symbol: string,
  unit: string,
  words: string,
  { low, high, path }: Value,
  input = path,
): GivenNumber => ({ symbol, unit, words, input, value: low === high ? low : Number.NaN });

/** Whether something is so, as a number. Example: yesOrNo('k1', 'Plate counts for it', true, …) → k1 = 1 */
export const yesOrNo = (symbol: string, words: string, is: boolean, path: string): GivenNumber =>
  given(symbol, '', `${words}: one for yes, nothing for no`, known(is ? 1 : 0, path));

/** Given numbers alone. */
export const numbers = (...all: readonly GivenNumber[]): Stretch => ({ given: all, steps: [] });

/** A single line. */
export const line = (...of: Parameters<typeof step>): Stretch => ({ given: [], steps: [step(...of)] });

/** A formula with its numbers, as a stretch of a longer way. */
export const stretchOf = ({ formula, values }: Pick<WorkedWay, 'formula' | 'values'>): Stretch => ({
  given: givenNumbers(formula, values),
  steps: formula.steps,
  definitions: formula.definitions,
});

/** Several stretches as one: each name once. */
export function joined(...all: readonly Stretch[]): Required<Stretch> {
  const once = <Each>(each: readonly Each[], name: (of: Each) => string): readonly Each[] => [
    ...new Map(each.map((of) => [name(of), of])).values(),
  ];
  return {
    given: once(
      all.flatMap((each) => each.given),
      ({ symbol }) => symbol,
    ),
    steps: once(
      all.flatMap((each) => each.steps),
      ({ gives }) => gives,
    ),
    definitions: once(
      all.flatMap((each) => each.definitions ?? []),
      ({ name }) => name,
    ),
  };
}

/** Whether names are all there, with every number that leads to them. */
export function isWorkable(stretch: Stretch, names: readonly string[]): boolean {
  const { given: all, steps, definitions } = joined(stretch);
  const there = new Set(namesIn({ symbols: all, steps }));
  const used = usedFor({ steps, definitions }, names);
  return (
    names.every((name) => there.has(name)) &&
    all.every(({ symbol, value }) => !used.has(symbol) || Number.isFinite(value))
  );
}

/** Everything that a formula names: what is given, and what its lines give. */
export const namesIn = ({ symbols, steps }: Pick<PrintedFormula, 'symbols' | 'steps'>): readonly string[] => [
  ...symbols.map(({ symbol }) => symbol),
  ...steps.map(({ gives }) => gives),
];

/** Worked out to what is held against each other, and to what else is named in `also`; null where a number that leads there is not known. */
export function workedStretch(
  stretch: Stretch,
  about: Pick<PrintedFormula, 'need' | 'have' | 'sense' | 'unit'>,
  also: readonly string[] = [],
): WorkedWay | null {
  const { given: all, steps, definitions } = joined(stretch);
  const used = usedFor({ steps, definitions }, [about.need, about.have, ...also]);
  const needed = all.filter(({ symbol }) => used.has(symbol));
  if (needed.some(({ value }) => !Number.isFinite(value))) return null;
  const formula: PrintedFormula = {
    symbols: needed.map(({ symbol, words, unit, input }) => ({ symbol, words, unit, input })),
    definitions: definitions.filter(({ name }) => used.has(name)),
    steps: steps.filter(({ gives }) => used.has(gives)),
    ...about,
  };
  const values = Object.fromEntries(needed.map(({ symbol, value }) => [symbol, value]));
  return { formula, values, worked: workOut(formula, values), outcome: null };
}

/** The way of a formula to one of its names, and nothing else; null where it has no such name. */
export function wayTo(way: WorkedWay, gives: string): WorkedWay | null {
  const { steps, symbols } = way.formula;
  const named = steps.find((each) => each.gives === gives) ?? symbols.find(({ symbol }) => symbol === gives);
  return named === undefined
    ? null
    : workedStretch(stretchOf(way), { need: gives, have: gives, sense: 'at-most', unit: named.unit });
}

/** The same formula for one of several: its own names with a number behind them. Example: 'm' of the second → 'm_2' */
export function numbered(
  { formula, values }: Pick<WorkedWay, 'formula' | 'values'>,
  index: number,
): {
  readonly stretch: Stretch;
  readonly need: string;
  readonly have: string;
} {
  const own = new Set(namesIn(formula));
  const called = (name: string): string => (own.has(name) ? `${name}_${index}` : name);
  const renamed = (line: string): string =>
    tokensOf(line)
      .map(({ kind, text }) => (kind === 'name' ? called(text) : text))
      .join('');
  return {
    stretch: {
      given: givenNumbers(formula, values).map((each) => ({ ...each, symbol: called(each.symbol) })),
      steps: formula.steps.map((each) => ({
        ...each,
        gives: called(each.gives),
        formula: renamed(each.formula),
      })),
      definitions: formula.definitions,
    },
    need: called(formula.need),
    have: called(formula.have),
  };
}
