import type { Catalog, Stated } from '../../src/catalog/catalog.ts';

export const COMMON_PRACTICE = 'common practice, no source';

/** What makes a row believable, with a row that is not, to show that the rule can catch one. */
export interface Rule<Row> {
  /** what holds of every row, a clause */
  readonly says: string;
  readonly reason: string;
  readonly source: string;
  /** true where the row breaks the rule; what is not known breaks none */
  readonly breaks: (row: Row, catalog: Catalog) => boolean;
  /** a row to spoil */
  readonly of: string;
  readonly spoil: (row: Row) => Row;
}

/** A number to compare with; not known: NaN, which compares as false. */
export const known = (value: Stated | null): number => (typeof value === 'number' ? value : Number.NaN);

/** The same for a pair. */
export const pair = (value: readonly [number, number] | 'unknown' | null): readonly [number, number] =>
  value === null || value === 'unknown' ? [Number.NaN, Number.NaN] : value;

/** How far `b` is from `a` is more than this share of it. */
export const differs = (a: number, b: number, share: number): boolean =>
  Math.abs(a - b) > Math.abs(a) * share;
