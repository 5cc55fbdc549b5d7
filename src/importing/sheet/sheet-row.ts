import { UNPRINTABLE } from '../../documents/printable.ts';

/** One row of a sheet: its number as a spreadsheet counts, from 1, and its cells as text. */
export interface SheetRow {
  readonly row: number;
  readonly cells: readonly string[];
}

const LONGEST = 500;

/** A cell on one line, without what could steer a display. */
export const cleaned = (cell: string): string =>
  cell.slice(0, LONGEST).replace(/\s+/g, ' ').replace(UNPRINTABLE, '').trim();
