import type { Dimension, Mark, Scene } from './scene.ts';

/** What the numbers and letters in a picture stand for, in the order in which they are listed beside it. */
export interface Keys {
  readonly marks: readonly (readonly [key: string, name: string])[];
  readonly dimensions: readonly (readonly [key: string, dimension: Dimension])[];
}

/** Numbers for things, letters for measures; the same thing in two panels has one number. */
export function keysOf({ panels }: Scene): Keys {
  const names = [...new Set(panels.flatMap(({ marks }) => marks.map(({ name }) => name)))];
  const measures = new Map(
    panels.flatMap(({ dimensions }) => dimensions.map((each) => [identityOf(each), each] as const)),
  );
  return {
    marks: names.map((name, index) => [String(index + 1), name]),
    dimensions: [...measures.values()].map((each, index) => [letters(index), each]),
  };
}

const identityOf = ({ name, path }: Dimension): string => JSON.stringify([name, path]);

export const keyOfMark = ({ marks }: Keys, { name }: Mark): string =>
  marks.find(([, each]) => each === name)?.[0] ?? '';

export const keyOfDimension = ({ dimensions }: Keys, dimension: Dimension): string =>
  dimensions.find(([, each]) => identityOf(each) === identityOf(dimension))?.[0] ?? '';

/** As drawings have it without I and O, which read as one and nought. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** A to Z, then AA, AB… Example: letters(25) → 'AB'. */
const letters = (index: number): string => {
  const last = LETTERS[index % LETTERS.length] ?? '';
  return index < LETTERS.length ? last : `${letters(Math.floor(index / LETTERS.length) - 1)}${last}`;
};
