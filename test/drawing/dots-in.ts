/** The dots that rows of braille set, counted from the upper left. */
export function dotsIn(rows: readonly string[]): readonly (readonly [x: number, y: number])[] {
  return rows.flatMap((row, cellY) =>
    [...row].flatMap((sign, cellX) => {
      const bits = (sign.codePointAt(0) ?? 0) - 0x2800;
      if (bits < 0 || bits > 0xff) return [];
      return PLACES.flatMap(([bit, x, y]) =>
        (bits & bit) === 0 ? [] : [[cellX * 2 + x, cellY * 4 + y] as const],
      );
    }),
  );
}

const PLACES = [
  [0x01, 0, 0],
  [0x02, 0, 1],
  [0x04, 0, 2],
  [0x08, 1, 0],
  [0x10, 1, 1],
  [0x20, 1, 2],
  [0x40, 0, 3],
  [0x80, 1, 3],
] as const;

/** From the first to the last, the first counted too. */
export const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values) + 1;
