import { freeId, rowId } from './row-id.ts';
import type { CellFault, TakenRow } from './taken-row.ts';

export interface SettledRows {
  readonly rows: readonly TakenRow[];
  readonly faults: readonly CellFault[];
}

/**
 * Rows with ids of their own: one that is there already word for word is left out, one that only has the same name gets a
 * number. A rotary that comes with a machine is named by its id. All of it is told. `there`: rotaries beside these rows.
 */
export function settleIds(rows: readonly TakenRow[], there: ReadonlySet<string> = new Set()): SettledRows {
  const faults: CellFault[] = [];
  const settled: TakenRow[] = [];
  const first = new Map<string, TakenRow>();
  const taken = { rotaries: new Set<string>(), machines: new Set<string>() };
  const same = new Map<string, TakenRow>();
  for (const row of rows) {
    const key = `${row.list} ${row.id}`;
    const before = first.get(key);
    const content = `${row.list} ${contentOf(row)}`;
    const twin = same.get(content);
    if (twin !== undefined) {
      faults.push(
        about(row, `says the same as row ${placeOf(twin)}`, 'expected it once: the row is left out'),
      );
      continue;
    }
    same.set(content, row);
    const id = freeId(row.id, taken[row.list]);
    taken[row.list].add(id);
    if (before === undefined) first.set(key, row);
    else {
      const found = `is called like row ${placeOf(before)}, with other values`;
      faults.push(about(row, found, `expected another name: it gets the id ${id}`));
    }
    const own = row.values.get('id') ?? { column: null, written: '' };
    settled.push({ ...row, id, values: new Map([...row.values, ['id', { ...own, value: id }]]) });
  }
  const rotaries = new Set([...taken.rotaries, ...there]);
  return { rows: settled.map((row) => withIncluded(row, rotaries, faults)), faults };
}

const about = (row: TakenRow, found: string, expected: string): CellFault => ({
  sheet: row.sheet,
  row: row.row,
  column: null,
  heading: null,
  found: `${row.id} ${found}`,
  expected,
});

const placeOf = ({ sheet, row }: TakenRow): string => (sheet === null ? String(row) : `${row} of ${sheet}`);

const contentOf = ({ values }: TakenRow): string =>
  JSON.stringify([...values].map(([path, { value }]) => [path, value]).sort());

function withIncluded(row: TakenRow, rotaries: ReadonlySet<string>, faults: CellFault[]): TakenRow {
  const included = row.values.get('rotaryIncluded');
  if (included === undefined || included.value === 'none') return row;
  const id = rowId(String(included.value)) ?? '';
  const values = new Map(row.values);
  if (rotaries.has(id)) values.set('rotaryIncluded', { ...included, value: id });
  else {
    values.delete('rotaryIncluded');
    const found = `names ${JSON.stringify(included.written)} as the rotary that comes with it`;
    const fault = about(row, found, 'expected a rotary of this file or of the folder: it is left out');
    faults.push({ ...fault, column: included.column });
  }
  return { ...row, values };
}
