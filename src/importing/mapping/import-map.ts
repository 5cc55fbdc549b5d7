import type { List } from '../../catalog/catalog.ts';

/** What a column is. */
export interface MappedColumn {
  /** as the spreadsheet calls it: A, B, … AA */
  readonly column: string;
  readonly heading: string;
  /** paths in a row of the catalog; skip: it is left out */
  readonly keys: readonly string[] | 'skip' | 'unknown';
  /** symbol of the unit of its numbers that have none */
  readonly unit: string | null;
  /** what stands in its cells, in lower case, and what it means */
  readonly cells?: ReadonlyMap<string, string>;
}

/** How a sheet is read. */
export interface SheetMap {
  /** null: the only one of a text file */
  readonly sheet: string | null;
  readonly rows: List | 'skip' | 'unknown';
  /** numbers of the rows that the headings stand in, one or two */
  readonly headings: readonly number[];
  /** values that every row has, by path */
  readonly fixed: Readonly<Record<string, string>>;
  readonly columns: readonly MappedColumn[];
}

/** How a file is read. */
export interface ImportMap {
  /** what lengths and masses without a unit are in */
  readonly units: 'mm' | 'inch' | 'unknown';
  /** what stands before the decimals of `1,500` or `1.500` */
  readonly decimals: 'point' | 'comma' | 'unknown';
  readonly currency: string | 'unknown';
  readonly source: {
    readonly maker: string | 'unknown';
    readonly document: string | 'unknown';
    readonly date: string | 'unknown';
  };
  readonly sheets: readonly SheetMap[];
}

export const NO_MAP: ImportMap = {
  units: 'unknown',
  decimals: 'unknown',
  currency: 'unknown',
  source: { maker: 'unknown', document: 'unknown', date: 'unknown' },
  sheets: [],
};

/** Letters of a column. Example: columnName(0) → 'A', columnName(27) → 'AB'. */
export function columnName(index: number): string {
  const before = Math.floor(index / 26);
  const letter = String.fromCharCode(65 + (index % 26));
  return before === 0 ? letter : columnName(before - 1) + letter;
}
