import type { Interval } from '../../quantities/interval.ts';
import type { Case } from './case.ts';
import type { Side } from './side.ts';
import type { Value } from './value.ts';

/** A number that terms are made of. */
export interface Input {
  readonly name: string;
  readonly unit: string;
  /** what the property tests draw from: the values that can really occur */
  readonly domain: readonly [low: number, high: number];
  read(of: Case): Value;
  /** the side that it is, where it is one: then many cases can be worked out at once */
  side?(of: Case): Side;
}

type Numbers<Key extends string> = Readonly<Record<Key, number>>;

/**
 * How a term moves with one input while the others stand still: `rises` or `falls` throughout; `ends`: one
 * way or the other, depending on the others, so that the extremes lie at the ends; or extreme points inside
 * the range, which a function gives for the values of the others.
 */
type Direction = 'rises' | 'falls' | 'ends' | ((others: Numbers<string>) => readonly number[]);

export interface Use {
  readonly input: Input;
  readonly direction: Direction;
}

export const rises = (input: Input): Use => ({ input, direction: 'rises' });
export const falls = (input: Input): Use => ({ input, direction: 'falls' });
export const ends = (input: Input): Use => ({ input, direction: 'ends' });
export const turnsAt = (input: Input, points: (others: Numbers<string>) => readonly number[]): Use => ({
  input,
  direction: points,
});

/** One candidate for the greatest or least: a plain formula with the direction of each of its inputs. */
export interface Term {
  readonly name: string;
  readonly uses: Readonly<Record<string, Use>>;
  readonly formula: (values: Numbers<string>) => number;
}

/** Declares a term. The formula sees the declared inputs and nothing else. */
export function term<Key extends string>(
  name: string,
  uses: Readonly<Record<Key, Use>>,
  formula: (values: Numbers<Key>) => number,
): Term {
  return { name, uses, formula: formula as Term['formula'] };
}

/** The same term with more inputs, e.g. a tip height with the length of the tool on top. */
export function extended<Key extends string>(
  base: Term,
  uses: Readonly<Record<Key, Use>>,
  formula: (base: number, values: Numbers<Key>) => number,
): Term {
  return {
    name: base.name,
    uses: { ...base.uses, ...uses },
    formula: (values) => formula(base.formula(values), values as Numbers<Key>),
  };
}

/**
 * One term of two, e.g. a difference. An input of both that moves them different ways has its extremes at
 * its ends only if the whole moves one way; the property tests of the check hold that.
 */
export function combined(a: Term, b: Term, formula: (a: number, b: number) => number): Term {
  const uses: Record<string, Use> = { ...a.uses };
  const renamed: [own: string, key: string][] = [];
  for (const [own, use] of Object.entries(b.uses)) {
    const there = uses[own];
    const same = there !== undefined && there.input === use.input;
    const key = there === undefined || same ? own : `${own} of ${b.name}`;
    const direction = same && there.direction !== use.direction ? 'ends' : use.direction;
    uses[key] = { input: use.input, direction };
    renamed.push([own, key]);
  }
  return {
    name: b.name,
    uses,
    formula: (values) => {
      const own: Record<string, number> = {};
      for (const [name, key] of renamed) own[name] = values[key] as number;
      return formula(a.formula(values), b.formula(own));
    },
  };
}

/** The term with its sign turned round. */
export function negated(base: Term): Term {
  const uses = Object.fromEntries(
    Object.entries(base.uses).map(([key, use]) => [key, { ...use, direction: opposite(use.direction) }]),
  );
  return { name: base.name, uses, formula: (values) => -base.formula(values) };
}

const opposite = (direction: Direction): Direction =>
  direction === 'rises' ? 'falls' : direction === 'falls' ? 'rises' : direction;

/**
 * The ends of a term over every value that its inputs may take: the formula at its corners. An end that
 * comes out as no number at all (nothing bounds it) is infinite.
 */
export function termEnds(of: Term, values: Readonly<Record<string, Interval>>): Interval {
  // most are exact, and this is done more often than anything else
  const numbers: Record<string, number> = {};
  let exact = true;
  for (const key in of.uses) {
    const { low, high } = values[key] as Interval;
    numbers[key] = low;
    if (low !== high) exact = false;
  }
  if (exact) {
    const only = of.formula(numbers);
    return Number.isNaN(only)
      ? { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }
      : { low: only, high: only };
  }
  const free: string[] = [];
  const atHigh: Record<string, number> = {};
  const atLow: Record<string, number> = {};
  for (const key in of.uses) {
    const { direction } = of.uses[key] as Use;
    const { low, high } = values[key] as Interval;
    atLow[key] = direction === 'falls' ? high : low;
    atHigh[key] = direction === 'falls' ? low : high;
    if (low !== high && direction !== 'rises' && direction !== 'falls') free.push(key);
  }
  return {
    low: extreme(of, values, atLow, free, Math.min, Number.POSITIVE_INFINITY),
    high: extreme(of, values, atHigh, free, Math.max, Number.NEGATIVE_INFINITY),
  };
}

/** The least or greatest of the formula over the candidates of the inputs that have no one direction. */
function extreme(
  of: Term,
  values: Readonly<Record<string, Interval>>,
  pinned: Record<string, number>,
  free: readonly string[],
  pick: (a: number, b: number) => number,
  start: number,
): number {
  // inputs with extreme points come last: their points depend on the values of the others
  const ordered = [...free].sort((a, b) => rank(of, a) - rank(of, b));
  let found = start;
  const visit = (index: number, chosen: Record<string, number>): void => {
    const key = ordered[index];
    if (key === undefined) {
      const value = of.formula(chosen);
      found = pick(found, Number.isNaN(value) ? -start : value);
      return;
    }
    const { low, high } = values[key] as Interval;
    const direction = (of.uses[key] as Use).direction;
    const inside = typeof direction === 'function' ? direction(chosen) : [];
    for (const at of [low, high, ...inside.filter((point) => point > low && point < high)])
      visit(index + 1, { ...chosen, [key]: at });
  };
  visit(0, pinned);
  return found;
}

const rank = (of: Term, key: string): number => (typeof of.uses[key]?.direction === 'function' ? 1 : 0);
