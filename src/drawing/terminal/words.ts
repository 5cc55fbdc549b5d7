import type { Keys } from '../keys.ts';
import { keyOfMark } from '../keys.ts';
import type { Mark, Panel, Point, Side } from '../scene.ts';
import { dotAt, type Placing } from './dots.ts';
import { DOTS_ACROSS, DOTS_DOWN, type Grid, isFree, setSigns } from './grid.ts';

/** Where a text begins that stands beside a cell. */
function placed([column, row]: Point, length: number, side: Side | 'on'): Point {
  switch (side) {
    case 'left':
      return [column - length - 1, row];
    case 'right':
      return [column + 2, row];
    case 'above':
      return [column - Math.floor((length - 1) / 2), row - 1];
    case 'below':
      return [column - Math.floor((length - 1) / 2), row + 1];
    case 'on':
      return [column - Math.floor((length - 1) / 2), row];
  }
}

const cellAt = (placing: Placing, point: Point): Point => {
  const [x, y] = dotAt(placing, point);
  return [Math.floor(x / DOTS_ACROSS), Math.floor(y / DOTS_DOWN)];
};

/** Writes what stands at the axes of a chart, and the numbers of things, each where it finds room. */
export function drawWords(grid: Grid, placing: Placing, panel: Panel, keys: Keys, ascii: boolean): void {
  for (const { at, text, side } of panel.labels) {
    const [column, row] = placed(cellAt(placing, at), text.length, side);
    const inside = Math.max(0, Math.min(column, grid.columns - text.length));
    setSigns(grid, inside, row, ascii ? text.replace(/[^ -~]/g, '?') : text);
  }
  for (const mark of panel.marks) drawMark(grid, cellAt(placing, mark.at), mark, keyOfMark(keys, mark));
}

const NEARBY: readonly Point[] = [
  [0, 0],
  [1, 0],
  [-1, 0],
  [2, 0],
  [0, -1],
  [0, 1],
  [-2, 0],
  [3, 0],
  [1, -1],
  [-1, 1],
  [-3, 0],
  [1, 1],
  [-1, -1],
  [0, -2],
  [0, 2],
];

function drawMark(grid: Grid, cell: Point, { stands }: Mark, key: string): void {
  const [column, row] = placed(cell, key.length, stands);
  const places = NEARBY.map(([x, y]): Point => [column + x, row + y]);
  // two numbers side by side would read as one
  const apart = places.find(([x, y]) => isFree(grid, x - 1, y, key.length + 2));
  const free = places.find(([x, y]) => isFree(grid, x, y, key.length));
  const [x, y] = apart ?? free ?? [column, row];
  setSigns(grid, x, y, key);
}
