import type { Stated } from '../../src/catalog/catalog.ts';
import type { Chance } from '../interviews/chance.ts';

/** How a row of a made-up market differs from the row that it is made after: larger or smaller as a whole, and each value a bit. */
export interface Scatter {
  readonly chance: Chance;
  /** a length that has to go with others: times the size, no more */
  readonly with: <Value extends Stated | null>(value: Value) => Value;
  /** times the size to this power, and up to a tenth more or less by chance; not known stays so */
  readonly by: (power: number) => <Value extends Stated | null>(value: Value) => Value;
}

/** A size from 1/spread to spread times. `digits` are kept of each number: with few of them values meet exactly. */
export function scatterOf(chance: Chance, spread: number, digits: number): Scatter {
  const size = spread ** (2 * chance.next() - 1);
  const times = <Value extends Stated | null>(value: Value, factor: number): Value =>
    (typeof value === 'number' ? Number((value * factor).toPrecision(digits)) : value) as Value;
  return {
    chance,
    with: (value) => times(value, size),
    by: (power) => (value) => times(value, size ** power * (0.9 + 0.2 * chance.next())),
  };
}

type Pair = readonly [number, number];

/** Both ends times the size, so that they stay in order. */
export const pairWith = (scatter: Scatter, [low, high]: Pair): Pair => [
  scatter.with(low),
  scatter.with(high),
];
