import { bitOf, DOTS_ACROSS, DOTS_DOWN } from './grid.ts';

const BRAILLE = 0x2800;

/** The dots of a cell as one braille sign; a space where there are none. */
export const brailleSign = (outline: number, hatch: number): string => {
  const dots = outline | hatch;
  return dots === 0 ? ' ' : String.fromCodePoint(BRAILLE + dots);
};

const ALL: readonly (readonly [x: number, y: number])[] = Array.from(
  { length: DOTS_ACROSS * DOTS_DOWN },
  (_, index) => [index % DOTS_ACROSS, Math.floor(index / DOTS_ACROSS)],
);

/** The same in ASCII: the direction of an outline through the cell, and a light sign for hatching alone. */
export function asciiSign(outline: number, hatch: number): string {
  if (outline === 0) return hatch === 0 ? ' ' : ':';
  const dots = ALL.filter(([x, y]) => (outline & bitOf(x, y)) !== 0);
  const [left, right] = [0, 1].map((column) => dots.filter(([x]) => x === column).map(([, y]) => y));
  const rows = new Set(dots.map(([, y]) => y));
  if (dots.length === 1) return rows.has(0) ? "'" : '.';
  if (left === undefined || right === undefined || left.length === 0 || right.length === 0) return '|';
  if (rows.size === 1) return rows.has(3) ? '_' : rows.has(0) ? '"' : '-';
  const mean = (ys: readonly number[]): number => ys.reduce((sum, y) => sum + y, 0) / ys.length;
  const slope = mean(right) - mean(left);
  if (Math.abs(slope) >= 0.75) return slope > 0 ? '\\' : '/';
  return dots.length <= 3 ? '-' : '+';
}
