import { UNPRINTABLE } from './printable.ts';

/** One row of a table: its number as a spreadsheet counts, from 1, and its cells as text. */
export interface SheetRow {
  readonly row: number;
  readonly cells: readonly string[];
}

/** What may stand between the cells of a table as text; where it leaves a doubt, the first. */
export const SEPARATORS = ['\t', ';', ','] as const;
export type Separator = (typeof SEPARATORS)[number];

const LONGEST = 500;

/** A cell on one line, without what could steer a display. */
export const cleaned = (cell: string): string =>
  cell.slice(0, LONGEST).replace(/\s+/g, ' ').replace(UNPRINTABLE, '').trim();
