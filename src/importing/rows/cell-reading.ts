/** A value as a catalog in mm holds it. */
export type CellValue =
  | number
  | string
  | boolean
  | null
  | readonly number[]
  | readonly Readonly<Record<string, unknown>>[];

export type CellReading =
  | { readonly ok: true; readonly value: CellValue | 'unknown' }
  /** a number without a unit, of a kind that needs one */
  | { readonly ok: false; readonly why: 'no-unit' }
  | { readonly ok: false; readonly why: 'fault'; readonly found: string; readonly expected: string };

export interface CellContext {
  /** of the column */
  readonly unit: string | null;
  /** of the file: for lengths and masses */
  readonly units: 'mm' | 'inch' | 'unknown';
  readonly decimals: 'point' | 'comma' | 'unknown';
}

export const given = (value: CellValue): CellReading => ({ ok: true, value });
export const fault = (found: string, expected: string): CellReading => ({
  ok: false,
  why: 'fault',
  found,
  expected,
});
