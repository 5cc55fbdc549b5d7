import type { List } from '../../catalog/catalog.ts';

import type { CellValue } from './cell-reading.ts';

/** A value that was taken, and the cell that it comes from. */
export interface TakenValue {
  readonly value: CellValue;
  /** letters of its column; null: the map says it for every row */
  readonly column: string | null;
  /** the cell as it is written, with the unit of its column behind a bare number */
  readonly written: string;
}

/** A row that was taken, its values by their paths in a row of the catalog. */
export interface TakenRow {
  readonly list: List;
  readonly id: string;
  readonly sheet: string | null;
  readonly row: number;
  readonly maker: string | null;
  readonly values: ReadonlyMap<string, TakenValue>;
}

/** A cell, or a row as a whole, that is not understood, and what to do about it. */
export interface CellFault {
  readonly sheet: string | null;
  readonly row: number;
  /** null: the row as a whole */
  readonly column: string | null;
  readonly heading: string | null;
  readonly found: string;
  readonly expected: string;
}
