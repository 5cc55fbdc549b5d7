import type { QuantityKind } from '../../quantities/kinds.ts';

/** What a cell of a column holds. */
export type CellForm =
  /** `orNone`: "none" is an answer, written as null */
  | { readonly form: 'quantity'; readonly of: QuantityKind; readonly orNone?: boolean }
  /** two ends in one cell: `-20 … 110` */
  | { readonly form: 'range'; readonly of: QuantityKind; readonly orNone?: boolean }
  /** so many in one cell: `760 x 510 x 510` */
  | { readonly form: 'several'; readonly of: QuantityKind; readonly count: number }
  /** any number of them: `80 / 160` */
  | { readonly form: 'quantities'; readonly of: QuantityKind }
  /** words of the trade, and what each is in a catalog */
  | { readonly form: 'choice'; readonly meanings: Readonly<Record<string, readonly string[]>> }
  | { readonly form: 'text'; readonly orNone?: boolean; readonly longest?: number }
  | { readonly form: 'flag' }
  /** standard, a price, or not offered */
  | { readonly form: 'feature' }
  /** boxes of a housing, or clearance additions: several in one cell */
  | { readonly form: 'boxes' | 'additions'; readonly of: 'length' }
  /** whether the base allows a mounting */
  | { readonly form: 'mounting' };

/** A key of a catalog that a column can be, and what the trade calls it. */
export interface ImportField {
  /** in a row of the catalog, such as `travel[0]`, `payload.level` */
  readonly path: string;
  readonly cell: CellForm;
  /** in lower case, without signs; one that may be something else too begins with a question mark, and is asked about */
  readonly words: readonly string[];
}

/** The kind of the numbers in the cells of a field; null where they are none. */
export function kindOf({ cell }: ImportField): QuantityKind | null {
  if (cell.form === 'feature') return 'money';
  return 'of' in cell ? cell.of : null;
}

/** What every row is called: by its id, its name (a rotary's also "rotary", a machine's "machine"), its maker. */
export const naming = (row: 'rotary' | 'machine'): readonly ImportField[] => [
  { path: 'id', cell: { form: 'text' }, words: ['id'] },
  {
    path: 'name',
    cell: { form: 'text' },
    words: ['name', 'model', row, 'product', 'designation', 'model name', 'item'],
  },
  {
    path: 'maker',
    // as the source of a catalog file takes it
    cell: { form: 'text', longest: 120 },
    words: ['maker', 'manufacturer', 'make', 'brand', 'builder', 'supplier'],
  },
];

export const quantity = (path: string, of: QuantityKind, ...words: string[]): ImportField => ({
  path,
  cell: { form: 'quantity', of },
  words,
});

export const noneOrQuantity = (path: string, of: QuantityKind, ...words: string[]): ImportField => ({
  path,
  cell: { form: 'quantity', of, orNone: true },
  words,
});

/** The range in a column of its own, and each of its ends in one. */
export const range = (
  path: string,
  of: QuantityKind,
  words: readonly string[],
  lows: readonly string[],
  highs: readonly string[],
  orNone = false,
): readonly ImportField[] => [
  { path, cell: { form: 'range', of, orNone }, words },
  { path: `${path}[0]`, cell: { form: 'quantity', of }, words: lows },
  { path: `${path}[1]`, cell: { form: 'quantity', of }, words: highs },
];

/** All sizes in a column of their own, and each in one. */
export const sizes = (
  path: string,
  words: readonly string[],
  each: readonly (readonly string[])[],
): readonly ImportField[] => [
  { path, cell: { form: 'several', of: 'length', count: each.length }, words },
  ...each.map((of, index) => quantity(`${path}[${index}]`, 'length', ...of)),
];
