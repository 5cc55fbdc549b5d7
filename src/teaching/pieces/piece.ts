import type { Input } from '../../rules/judging/term.ts';
import type { FormulaSource } from '../formula/formula-source.ts';
import type { FormulaStep } from '../formula/printed-formula.ts';
import { usedFor } from '../formula/used-for.ts';
import { tiltingIn } from './tilting.ts';

/** A stretch of the way that several checks share: what it is given, and its steps. */
export interface Piece {
  readonly given: Readonly<Record<string, Input>>;
  readonly steps: readonly FormulaStep[];
}

/** The way to a need and a have: of several stretches what leads there, each line and each given number once. */
export function source(pieces: readonly Piece[], need: string, have: string): FormulaSource {
  const all = new Map(pieces.flatMap(({ steps }) => steps).map((each) => [each.gives, each] as const));
  const given = Object.assign({}, ...pieces.map((each) => each.given)) as Piece['given'];
  const whole = [...all.values()];
  const used = usedFor({ steps: whole, definitions: [] }, [need, have]);
  const steps = whole.filter(({ gives }) => used.has(gives));
  return {
    given: Object.fromEntries(Object.entries(given).filter(([name]) => used.has(name) && !all.has(name))),
    definitions: tiltingIn(steps.map(({ formula }) => formula)),
    steps,
    need,
    have,
  };
}

/** Numbers that are given as they are. */
export const given = (symbols: Piece['given']): Piece => ({ given: symbols, steps: [] });

/** Lines alone. */
export const lines = (...steps: readonly FormulaStep[]): Piece => ({ given: {}, steps });

/** The same input under words that fit better here. */
export const called = (name: string, input: Input): Input => ({ ...input, name });

/** Several terms as the arguments of a function; one alone stands for itself. */
export function overAll(name: 'max' | 'min', terms: readonly string[]): string {
  const each = [...new Set(terms)];
  return each.length === 1 ? (each[0] ?? '0') : `${name}(${each.join(', ')})`;
}
