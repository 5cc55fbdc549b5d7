import type { Stated } from '../catalog.ts';

/** For what the trade knows and no document says. */
export const COMMON_PRACTICE = 'common practice, no source';
export const GEOMETRY = 'geometry';

/** What a rule may ask besides the row itself. */
export interface Surroundings {
  /** a value in its base unit as a reader of this file reads it, e.g. `508 mm`, `20 in (508 mm)` */
  readonly say: (value: number, unit: string) => string;
  /** middle price of a kilogram of this kind of row; null where too few rows state both */
  readonly pricePerKilogram: number | null;
}

/** A value that is hard to believe. */
export interface Doubt {
  /** within the row; empty: the row as a whole */
  readonly path: readonly (string | number)[];
  /** a clause behind the name of the value, e.g. `is 100 mm, and the faceplate is 125 mm` */
  readonly found: string;
  /** e.g. `at least the faceplate` */
  readonly expected: string;
  /** what was perhaps meant, as it would be written, e.g. `20 in` */
  readonly perhaps?: string | undefined;
}

/**
 * What holds of every row that can be believed. A row that breaks it stays usable: it is told, with the reason. What is
 * not known breaks nothing.
 */
export interface PlausibleRule<Row> {
  readonly id: string;
  /** why it holds, a clause */
  readonly reason: string;
  readonly source: string;
  readonly doubts: (row: Row, around: Surroundings) => readonly Doubt[];
}

/** A number to compare with; not known: NaN, which compares as false. */
export const known = (value: Stated | null | undefined): number =>
  typeof value === 'number' ? value : Number.NaN;

/** The same for both ends of a range. */
export const ends = (
  value: readonly [number, number] | 'unknown' | null | undefined,
): readonly [low: number, high: number] =>
  value === null || value === undefined || value === 'unknown' ? [Number.NaN, Number.NaN] : value;

/** From end to end; NaN where it is not known. */
export const spanOf = (value: Parameters<typeof ends>[0]): number => ends(value)[1] - ends(value)[0];

/** The doubt where it is one. Example: when(false, doubt) → []. */
export const when = (broken: boolean, doubt: () => Doubt): readonly Doubt[] => (broken ? [doubt()] : []);
