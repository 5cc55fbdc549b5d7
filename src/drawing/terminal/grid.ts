/** Dots in a cell of a terminal: two across, four down. */
export const DOTS_ACROSS = 2;
export const DOTS_DOWN = 4;

/** A field of cells, each with its dots of outlines and of hatching, or with a sign that stands over them. */
export interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly outline: Uint8Array;
  readonly hatch: Uint8Array;
  /** signs by cell, row after row; empty where only dots are */
  readonly signs: string[];
}

export const emptyGrid = (columns: number, rows: number): Grid => ({
  columns,
  rows,
  outline: new Uint8Array(columns * rows),
  hatch: new Uint8Array(columns * rows),
  signs: Array.from({ length: columns * rows }, () => ''),
});

/** The bit of a dot in a cell, as braille numbers them: 1, 2, 3, 7 on the left, 4, 5, 6, 8 on the right. */
const BITS = [
  [0x01, 0x08],
  [0x02, 0x10],
  [0x04, 0x20],
  [0x40, 0x80],
] as const;

export const bitOf = (x: number, y: number): number => BITS[y % DOTS_DOWN]?.[x % DOTS_ACROSS] ?? 0;

/** Sets one dot, counted from the upper left; outside the field nothing happens. */
export function setDot(grid: Grid, layer: 'outline' | 'hatch', x: number, y: number): void {
  const { columns, rows, [layer]: dots } = grid;
  const [column, row] = [Math.floor(x / DOTS_ACROSS), Math.floor(y / DOTS_DOWN)];
  if (x < 0 || y < 0 || column >= columns || row >= rows) return;
  const cell = row * columns + column;
  dots[cell] = (dots[cell] ?? 0) | bitOf(x, y);
}

/** Clears one dot in both layers. */
export function clearDot({ columns, rows, outline, hatch }: Grid, x: number, y: number): void {
  const [column, row] = [Math.floor(x / DOTS_ACROSS), Math.floor(y / DOTS_DOWN)];
  if (x < 0 || y < 0 || column >= columns || row >= rows) return;
  const cell = row * columns + column;
  for (const dots of [outline, hatch]) dots[cell] = (dots[cell] ?? 0) & ~bitOf(x, y);
}

/** Sets signs from a cell to the right, as far as the field goes. */
export function setSigns({ columns, rows, signs }: Grid, column: number, row: number, text: string): void {
  if (row < 0 || row >= rows) return;
  [...text].forEach((sign, index) => {
    const at = column + index;
    if (at >= 0 && at < columns) signs[row * columns + at] = sign;
  });
}

/** Are so many cells from here to the right free of signs? */
export function isFree({ columns, rows, signs }: Grid, column: number, row: number, count: number): boolean {
  if (row < 0 || row >= rows || column < 0 || column + count > columns) return false;
  return signs.slice(row * columns + column, row * columns + column + count).every((sign) => sign === '');
}
