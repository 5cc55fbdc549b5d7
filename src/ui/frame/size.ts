import { cut } from '../look/cells.ts';
import { EMPTY, type Row, row } from '../look/row.ts';
import { LEAST_COLUMNS, LEAST_ROWS } from './context.ts';

/** The size of a window. */
export interface Size {
  readonly columns: number;
  readonly rows: number;
}

export const isTooSmall = ({ columns, rows }: Size): boolean => columns < LEAST_COLUMNS || rows < LEAST_ROWS;

/** In a window that is too small: one line, whatever the room; what Ctrl-C has to say comes before the request to enlarge it. */
export function smallRows(leaving: string | null, { columns, rows }: Size): readonly Row[] {
  const height = Math.max(1, rows - 1);
  const words = leaving ?? tooSmallWords(columns);
  return [row(cut(words, columns), 'strong'), ...Array.from({ length: height - 1 }, () => EMPTY)];
}

const tooSmallWords = (columns: number): string =>
  columns < 56 ? 'Enlarge to 60×20' : 'Make the window larger: 60 columns by 20 rows at least.';
