import type { List } from '../../catalog/catalog.ts';
import type { SheetRow } from '../../documents/sheet-row.ts';

import { sureColumn } from './guess-column.ts';

/** Where the headings of a sheet stand, and what they are, column by column. */
export interface Headings {
  /** numbers of their rows, one or two */
  readonly rows: readonly number[];
  readonly texts: readonly string[];
  /** the list whose keys more headings name; null: neither of them */
  readonly list: List | null;
  /** how many different keys they name */
  readonly known: number;
}

/** Rows above the headings that are looked through: titles, dates, notes. */
export const ROWS_BEFORE_DATA = 20;

/** A single word of the trade stands in many a note. */
const FEWEST = 2;

/**
 * The row, or the two rows one above the other, of which most headings are understood. A heading over several columns
 * stands above each of them. null: nothing in it is understood.
 */
export function findHeadings(head: readonly SheetRow[]): Headings | null {
  let best: Headings | null = null;
  let most = 0;
  for (const texts of candidatesOf(head)) {
    const [rotaries, machines] = [known('rotaries', texts.texts), known('machines', texts.texts)];
    const count = Math.max(rotaries, machines);
    const score = count + unitsIn(rotaries > machines ? 'rotaries' : 'machines', texts.texts) / 1000;
    if (count < FEWEST || score <= most) continue;
    // what a built-in table is called by is called so of a rotary too, and tells nothing
    const own = known('machines', texts.texts, (path) => !path.startsWith('builtIn.'));
    const list = rotaries === own ? null : rotaries > own ? 'rotaries' : 'machines';
    [best, most] = [{ ...texts, list, known: count }, score];
  }
  return best;
}

/** The headings that stand in these rows. Example: rows 1 and 2 with `Travel (mm)` over X, Y, Z → 'Travel X (mm)' … */
export function headingsIn(head: readonly SheetRow[], rows: readonly number[]): readonly string[] {
  const [first, second] = rows.map((row) => head.find((each) => each.row === row)?.cells ?? []);
  if (second === undefined) return first ?? [];
  return joined(first ?? [], second);
}

function candidatesOf(head: readonly SheetRow[]): readonly Omit<Headings, 'list' | 'known'>[] {
  const rows = head.slice(0, ROWS_BEFORE_DATA);
  const single = rows.map(({ row, cells }) => ({ rows: [row], texts: cells }));
  const double = rows.slice(1).flatMap((below, index) => {
    const above = rows[index];
    return above === undefined
      ? []
      : [{ rows: [above.row, below.row], texts: joined(above.cells, below.cells) }];
  });
  return [...single, ...double];
}

function joined(above: readonly string[], below: readonly string[]): readonly string[] {
  const length = Math.max(above.length, below.length);
  let over = '';
  return Array.from({ length }, (_, at) => {
    const [own, under] = [above[at] ?? '', below[at] ?? ''];
    if (own !== '') over = own;
    // what stands alone above is a heading of its own; a merged one is written into its first cell only
    if (under === '') return own;
    return withUnitLast(over, under);
  });
}

/** Example: ('Travel (mm)', 'X') → 'Travel X (mm)'; ('Mass', 'kg') → 'Mass kg'. */
function withUnitLast(above: string, below: string): string {
  const [, title, unit] = /^(.*?)\s*([([{][^)\]}]*[)\]}])\s*$/s.exec(above) ?? [];
  return title === undefined || unit === undefined || /[([{]/.test(below)
    ? `${above} ${below}`.trim()
    : `${title} ${below} ${unit}`;
}

/** How many different keys of the list the headings name for sure. */
function known(list: List, texts: readonly string[], counts: (path: string) => boolean = () => true): number {
  const paths = texts.filter((text) => text !== '').map((text) => sureColumn(list, text)?.sure.path);
  return new Set(paths.filter((path) => path !== undefined && counts(path))).size;
}

/** A row of units under the headings names no more keys, but makes more of them readable. */
const unitsIn = (list: List, texts: readonly string[]): number =>
  texts.filter((text) => text !== '' && (sureColumn(list, text)?.unit ?? null) !== null).length;
