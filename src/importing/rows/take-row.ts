import { FEATURES, type List, MOUNTINGS } from '../../catalog/catalog.ts';
import { isTilting } from '../../catalog/tilting.ts';
import { quoted } from '../../documents/printable.ts';
import type { SheetRow } from '../../documents/sheet-row.ts';
import type { ImportField } from '../fields/import-field.ts';
import { FIELDS, fieldAt } from '../fields/index.ts';
import type { ImportMap } from '../mapping/import-map.ts';
import type { PlannedColumn, SheetPlan } from '../mapping/sheet-plan.ts';
import type { CellValue } from './cell-reading.ts';
import { isNothing, readCell } from './read-cell.ts';
import { sharedParts } from './read-numbers.ts';
import { rowId } from './row-id.ts';
import { schemaFaults } from './schema-faults.ts';
import type { CellFault, TakenRow, TakenValue } from './taken-row.ts';

export interface RowReading {
  /** null: the row is left out, and the faults say why */
  readonly row: TakenRow | null;
  readonly faults: readonly CellFault[];
  /** columns with a number that has no unit, of a kind that needs one */
  readonly withoutUnit: readonly PlannedColumn[];
  /** words in cells that are not understood */
  readonly words: readonly (readonly [PlannedColumn, string])[];
}

/** Reads one row of a sheet. What is right is taken whatever else is wrong; what is not understood is left unknown. */
export function takeRow(source: SheetRow, list: List, plan: SheetPlan, map: ImportMap): RowReading {
  const { row, cells } = source;
  const at = { sheet: plan.sheet, row } as const;
  const faults: CellFault[] = [];
  const withoutUnit: PlannedColumn[] = [];
  const words: (readonly [PlannedColumn, string])[] = [];
  const values = new Map<string, TakenValue>();
  const take = (
    field: ImportField,
    text: string,
    unit: string | null,
    column: PlannedColumn | null,
    own = text,
  ) => {
    const reading = readCell(own, field, { unit, units: map.units, decimals: map.decimals });
    const written = unit !== null && /\d$/.test(text) ? `${text} ${unit}` : text;
    if (reading.ok) {
      if (reading.value === 'unknown') return;
      values.set(field.path, { value: reading.value, column: column?.column ?? null, written });
    } else if (reading.why === 'no-unit') {
      if (column !== null) withoutUnit.push(column);
    } else {
      const { found, expected } = reading;
      if (column !== null && (field.cell.form === 'choice' || !/[\d=#]/.test(text)))
        words.push([column, text]);
      // a cell that several keys have is told once
      const last = faults.at(-1);
      if (column !== null && last?.column === column.column && last.found === found) return;
      faults.push({
        ...at,
        column: column?.column ?? null,
        heading: column?.heading ?? null,
        found,
        expected,
      });
    }
  };
  for (const [path, text] of Object.entries(plan.fixed)) {
    const field = fieldAt(list, path);
    if (field !== undefined) take(field, text, null, null);
  }
  for (const column of plan.columns) {
    const text = cells[column.at] ?? '';
    const meant = column.cells.get(text.trim().toLowerCase()) ?? text;
    const parts = partsFor(column.fields, meant);
    if (parts?.length === 0 && !isNothing(meant)) {
      const { column: letters, heading } = column;
      const expected = `expected ${column.fields.length}, with x or / between them`;
      const found = `${quoted(text)} is not so many numbers`;
      faults.push({ ...at, column: letters, heading, found, expected });
      continue;
    }
    for (const [index, field] of column.fields.entries())
      take(field, text, column.unit, column, parts?.[index] ?? meant);
  }
  const whole = (found: string, expected: string): RowReading => {
    const fault = { ...at, column: null, heading: null, found, expected };
    return { row: null, faults: [...faults, fault], withoutUnit, words };
  };
  const name = values.get('name')?.value;
  const kind = list === 'rotaries' ? 'class' : 'kind';
  if (typeof name !== 'string') return whole('the row has no name', 'expected one: the row is left out');
  if (values.get(kind) === undefined) {
    const said = plan.columns.find(({ fields }) => fields.some(({ path }) => path === kind))?.column;
    const wrong = faults.findIndex(({ column }) => column !== null && column === said);
    const cell = faults[wrong];
    if (cell !== undefined) {
      faults[wrong] = { ...cell, expected: `${cell.expected}; the row is left out` };
      return { row: null, faults, withoutUnit, words };
    }
    const why = `nothing says the ${kind} of the row`;
    return whole(why, `expected a column for it, or ${kind} under fixed in the map: the row is left out`);
  }
  if (list === 'machines') addSpindle(values);
  const own = values.get('id')?.value;
  const id = typeof own === 'string' ? own : (rowId(name) ?? `row-${row}`);
  if (own === undefined) values.set('id', { value: id, column: null, written: '' });
  faults.push(...halfRanges(list, values).map((fault) => ({ ...at, ...fault })));
  faults.push(...holdFaults(values).map((fault) => ({ ...at, ...fault })));
  if (list === 'machines') addFeatures(values);
  const maker = values.get('maker')?.value;
  const taken = { list, id, sheet: plan.sheet, row, maker: typeof maker === 'string' ? maker : null, values };
  const wrong = schemaFaults(taken, plan);
  faults.push(...wrong.faults);
  if (wrong.fatal) return { row: null, faults, withoutUnit, words };
  return { row: { ...taken, values: wrong.values }, faults, withoutUnit, words };
}

/**
 * What of a cell each of several keys gets, where it holds a number for each; null: each gets all of it. Empty: it
 * has not so many, and they are of different kinds.
 */
function partsFor(fields: readonly ImportField[], text: string): readonly string[] | null {
  const kinds = fields.flatMap(({ cell }) => (cell.form === 'quantity' ? [cell.of] : []));
  if (kinds.length < 2 || kinds.length < fields.length) return null;
  const parts = sharedParts(text, kinds);
  return parts === null && new Set(kinds).size > 1 ? [] : parts;
}

type Fault = Omit<CellFault, 'sheet' | 'row'>;

/** A range of which one end is known says nothing that a catalog can hold. */
function halfRanges(list: List, values: Map<string, TakenValue>): readonly Fault[] {
  return FIELDS[list].flatMap(({ path, cell }): readonly Fault[] => {
    if (cell.form !== 'range') return [];
    const ends = [`${path}[0]`, `${path}[1]`];
    const there = ends.filter((end) => values.has(end));
    const known = there.map((end) => values.get(end));
    if (values.has(path) || there.length === 1) for (const end of ends) values.delete(end);
    const [only] = known;
    if (values.has(path) || there.length !== 1 || only === undefined) return [];
    const found = `only one end of ${path} is known`;
    return [{ column: only.column, heading: null, found, expected: 'expected both: it is left unknown' }];
  });
}

/** In a catalog a mounting that is not named is impossible, so all of them are left unknown unless each is said. */
function holdFaults(values: Map<string, TakenValue>): readonly Fault[] {
  const paths = [...values.keys()].filter((path) => path.startsWith('hold.'));
  if (paths.length === 0) return [];
  const tilts = isTilting(values.get('class')?.value);
  const own = MOUNTINGS.filter((mounting) => mounting.startsWith(tilts ? 'tilt-' : 'axis-'));
  const silent = own.filter((mounting) => !paths.some((path) => path.startsWith(`hold.${mounting}`)));
  const denied = own.filter((mounting) => values.get(`hold.${mounting}`)?.value === false);
  for (const mounting of denied) setAll(values, mounting, null);
  if (silent.length === 0) return [];
  for (const path of paths) values.delete(path);
  const found = `nothing says whether it can be held ${silent.join(' and ')}`;
  const expected = 'expected none where it cannot: how it is held is left unknown';
  return [{ column: null, heading: null, found, expected }];
}

function setAll(values: Map<string, TakenValue>, mounting: string, value: CellValue): void {
  const before = values.get(`hold.${mounting}`);
  for (const path of [...values.keys()]) if (path.startsWith(`hold.${mounting}.`)) values.delete(path);
  if (before !== undefined) values.set(`hold.${mounting}`, { ...before, value });
}

/** Words for a kind of machine that say which way its spindle points say both, such as `HMC`. */
function addSpindle(values: Map<string, TakenValue>): void {
  const kind = values.get('kind');
  const field = fieldAt('machines', 'spindle');
  if (kind === undefined || field === undefined || values.has('spindle')) return;
  const reading = readCell(kind.written, field, { unit: null, units: 'unknown', decimals: 'unknown' });
  if (reading.ok && reading.value !== 'unknown') values.set('spindle', { ...kind, value: reading.value });
}

/** In a catalog a feature that is left out is not offered, so one of which nothing is said is said to be unknown. */
function addFeatures(values: Map<string, TakenValue>): void {
  for (const feature of FEATURES) {
    const path = `features.${feature}`;
    const taken = values.get(path);
    if (taken === undefined) values.set(path, { value: 'unknown', column: null, written: '' });
    else if (taken.value === null) values.delete(path);
  }
}
