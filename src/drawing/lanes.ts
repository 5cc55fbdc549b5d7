import { type Dimension, SIDES, type Side } from './scene.ts';

/** The measures on each side of a picture, in rows that lie beside each other, the innermost first. */
export type Lanes = Readonly<Record<Side, readonly (readonly Dimension[])[]>>;

/** Is it measured level, from left to right? */
export const isLevel = ({ side }: Pick<Dimension, 'side'>): boolean => side === 'above' || side === 'below';

/** From where to where a measure reaches along its own direction, the lesser end first. */
export function spanOf(dimension: Dimension): readonly [low: number, high: number] {
  const axis = isLevel(dimension) ? 0 : 1;
  const [a, b] = [dimension.from[axis], dimension.to[axis]];
  return a < b ? [a, b] : [b, a];
}

/**
 * Each measure in the innermost row of its side in which nothing overlaps it, short ones first. `apart`: how far two
 * in a row must be from each other, mm; ends may touch.
 */
export function lanesOf(dimensions: readonly Dimension[], least: number): Lanes {
  const bySide = SIDES.map((side): [Side, Dimension[][]] => {
    const own = dimensions.filter((each) => each.side === side);
    const rows: Dimension[][] = [];
    for (const each of [...own].sort((a, b) => lengthOf(a) - lengthOf(b))) {
      const row = rows.find((others) => others.every((other) => areApart(each, other, least)));
      if (row === undefined) rows.push([each]);
      else row.push(each);
    }
    return [side, rows];
  });
  return Object.fromEntries(bySide) as unknown as Lanes;
}

const lengthOf = (dimension: Dimension): number => {
  const [low, high] = spanOf(dimension);
  return high - low;
};

/** Short ones take up the room that their letter needs. */
function areApart(a: Dimension, b: Dimension, least: number): boolean {
  const [[lowA, highA], [lowB, highB]] = [widened(spanOf(a), least), widened(spanOf(b), least)];
  const slack = 1e-9 * (1 + Math.abs(highA) + Math.abs(highB));
  return highA <= lowB + slack || highB <= lowA + slack;
}

const widened = ([low, high]: readonly [number, number], least: number): readonly [number, number] => {
  const more = Math.max(0, least - (high - low)) / 2;
  return [low - more, high + more];
};
