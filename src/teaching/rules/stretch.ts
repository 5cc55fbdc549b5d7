import type { Value } from '../../rules/judging/value.ts';
import type { WorkedWay } from '../examples/worked-check.ts';
import type { Definition, FormulaStep, GivenNumber, PrintedFormula } from '../formula/printed-formula.ts';
import { tokensOf } from '../formula/tokens.ts';
import { usedFor } from '../formula/used-for.ts';
import { workOut } from '../formula/work-out.ts';

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

/** Given numbers alone. */
export const numbers = (...all: readonly GivenNumber[]): Stretch => ({ given: all, steps: [] });

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
  const there = new Set([...all.map(({ symbol }) => symbol), ...steps.map(({ gives }) => gives)]);
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

/** The way of a formula to one of its names, and nothing else; throws where it has no such name. */
export function wayTo({ formula, values }: WorkedWay, gives: string): WorkedWay {
  const line = [
    ...formula.steps.map((each) => ({ ...each, name: each.gives })),
    ...formula.symbols.map((each) => ({ ...each, name: each.symbol })),
  ].find(({ name }) => name === gives);
  if (line === undefined) throw new RangeError(`nothing gives ${gives}`);
  const found = workedStretch(
    {
      given: formula.symbols.map((each) => ({ ...each, value: values[each.symbol] ?? Number.NaN })),
      steps: formula.steps,
      definitions: formula.definitions,
    },
    { need: gives, have: gives, sense: 'at-most', unit: line.unit },
  );
  if (found === null) throw new RangeError(`${gives} is not known`);
  return found;
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
  const own = new Set([
    ...formula.symbols.map(({ symbol }) => symbol),
    ...formula.steps.map(({ gives }) => gives),
  ]);
  const called = (name: string): string => (own.has(name) ? `${name}_${index}` : name);
  const renamed = (line: string): string =>
    tokensOf(line)
      .map(({ kind, text }) => (kind === 'name' ? called(text) : text))
      .join('');
  return {
    stretch: {
      given: formula.symbols.map((each) => ({
        ...each,
        symbol: called(each.symbol),
        value: values[each.symbol] ?? Number.NaN,
      })),
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
