import type { List } from '../../catalog/catalog.ts';
import type { SheetRow } from '../../documents/sheet-row.ts';
import type { ImportField } from '../fields/import-field.ts';
import { fieldAt } from '../fields/index.ts';
import { findHeadings, headingsIn } from './find-headings.ts';
import { type ColumnGuess, guessColumn } from './guess-column.ts';
import { columnName, type ImportMap, type SheetMap } from './import-map.ts';

/** A column of a sheet, and what became of it. */
export interface PlannedColumn {
  readonly at: number;
  /** as the spreadsheet calls it */
  readonly column: string;
  readonly heading: string;
  /** keys that it gives; none: it is left out */
  readonly fields: readonly ImportField[];
  /** symbol of the unit that its map or its heading names */
  readonly unit: string | null;
  /** what the map says that its cells mean, by their text in lower case */
  readonly cells: ReadonlyMap<string, string>;
  /** why it is left out, and whether somebody has to say what it is */
  readonly left: null | {
    readonly why: 'skipped' | 'not-known' | 'twin';
    readonly likely: readonly string[];
  };
}

/** How a sheet is read: by its map where there is one, and by its headings. */
export interface SheetPlan {
  readonly sheet: string | null;
  readonly list: List | 'skip' | 'unknown';
  readonly headings: readonly number[];
  readonly columns: readonly PlannedColumn[];
  readonly fixed: Readonly<Record<string, string>>;
  /** that prices are in, as headings say */
  readonly currencies: readonly string[];
  /** entries of the map for which there is no column */
  readonly strangers: readonly { readonly index: number; readonly heading: string }[];
}

const NO_CELLS: ReadonlyMap<string, string> = new Map();

/** `head`: the first rows of the sheet, enough to hold the headings. */
export function sheetPlan(sheet: string | null, head: readonly SheetRow[], map: ImportMap): SheetPlan {
  const own = map.sheets.find((each) => each.sheet === sheet);
  const said = rowsNamed(own, head);
  const found = said.length === 0 ? findHeadings(head) : null;
  const headings = found?.rows ?? said;
  const texts = found?.texts ?? headingsIn(head, headings);
  const rows = own?.rows ?? 'unknown';
  const list: SheetPlan['list'] = rows === 'unknown' ? (found?.list ?? 'unknown') : rows;
  const none = { sheet, list, headings, fixed: own?.fixed ?? {}, currencies: [] };
  if (list === 'skip') return { ...none, columns: [], strangers: [] };
  const columns: PlannedColumn[] = [];
  const currencies = new Set<string>();
  for (const [at, heading] of texts.entries()) {
    if (heading === '') continue;
    const mapped = own?.columns.find((each) => isColumn(each, at, heading));
    const guess = list === 'unknown' ? null : guessColumn(list, heading);
    const unit = mapped?.unit ?? guess?.unit ?? null;
    const named = { at, column: columnName(at), heading, unit, cells: mapped?.cells ?? NO_CELLS };
    if (mapped !== undefined && mapped.keys !== 'unknown') {
      const fields = mapped.keys === 'skip' || list === 'unknown' ? [] : fieldsAt(list, mapped.keys);
      if (fields.length > 0) addCurrency(guess, currencies);
      columns.push({ ...named, fields, left: fields.length > 0 ? null : { why: 'skipped', likely: [] } });
      continue;
    }
    const field = guess?.sure ?? null;
    const twin = field !== null && isGiven(field, columns, own);
    if (field !== null && !twin) addCurrency(guess, currencies);
    const left = field === null ? 'not-known' : twin ? 'twin' : null;
    const likely = field === null ? (guess?.likely ?? []) : [field.path];
    columns.push({
      ...named,
      fields: field === null || twin ? [] : [field],
      left: left === null ? null : { why: left, likely },
    });
  }
  return { ...none, columns, currencies: [...currencies], strangers: strangersOf(own, texts) };
}

function addCurrency(guess: ColumnGuess | null, currencies: Set<string>): void {
  if (guess !== null && guess.currency !== null) currencies.add(guess.currency);
}

/** The rows that the map says the headings stand in, or the one in which it names a heading. */
function rowsNamed(own: SheetMap | undefined, head: readonly SheetRow[]): readonly number[] {
  if (own === undefined || own.headings.length > 0) return own?.headings ?? [];
  const holds = ({ cells }: SheetRow) =>
    own.columns.some((each) => cells.some((cell, at) => isColumn(each, at, cell)));
  return head
    .filter(holds)
    .map(({ row }) => row)
    .slice(0, 1);
}

const isColumn = ({ column, heading }: SheetMap['columns'][number], at: number, text: string): boolean =>
  column === columnName(at) && heading === text;

const fieldsAt = (list: List, paths: readonly string[]): readonly ImportField[] =>
  paths.flatMap((path) => fieldAt(list, path) ?? []);

/** Whether a column before it, or one that the map names, is the same already. */
const isGiven = (
  { path }: ImportField,
  before: readonly PlannedColumn[],
  own: SheetMap | undefined,
): boolean =>
  before.some(({ fields }) => fields.some((field) => field.path === path)) ||
  (own?.columns ?? []).some(({ keys }) => keys.includes(path)) ||
  Object.hasOwn(own?.fixed ?? {}, path);

const strangersOf = (own: SheetMap | undefined, texts: readonly string[]) =>
  (own?.columns ?? []).flatMap((each, index) =>
    texts.some((text, at) => isColumn(each, at, text)) ? [] : [{ index, heading: each.heading }],
  );
