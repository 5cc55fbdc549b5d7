import type { SheetRow } from '../../documents/sheet-row.ts';
import { ROWS_BEFORE_DATA } from '../mapping/find-headings.ts';
import type { ImportMap } from '../mapping/import-map.ts';
import { type PlannedColumn, type SheetPlan, sheetPlan } from '../mapping/sheet-plan.ts';
import { takeRow } from './take-row.ts';
import type { CellFault, TakenRow } from './taken-row.ts';

/** What came of a sheet. */
export interface ImportedSheet {
  readonly plan: SheetPlan;
  readonly rows: readonly TakenRow[];
  readonly faults: readonly CellFault[];
  /** columns whose numbers have no unit, with how many of them */
  readonly withoutUnit: ReadonlyMap<PlannedColumn, number>;
  /** words in the cells of a column that are not understood, as they are first written */
  readonly words: ReadonlyMap<PlannedColumn, ReadonlyMap<string, string>>;
  /** rows under the headings that hold anything */
  readonly filled: number;
  /** cells beyond the last heading, or under none */
  readonly strays: number;
}

/** Takes a sheet row by row, so that a long file is never held as a whole. */
export interface SheetImporter {
  readonly row: (row: SheetRow) => void;
  readonly end: () => ImportedSheet;
}

/** Of a column: where there are more, it is something else than it was taken for. */
const MOST_WORDS = 40;
/** Characters: a map holds no more of a cell. */
const LONGEST_WORD = 200;

export function sheetImporter(sheet: string | null, map: ImportMap): SheetImporter {
  let head: SheetRow[] | null = [];
  let plan: SheetPlan = sheetPlan(sheet, [], map);
  const rows: TakenRow[] = [];
  const faults: CellFault[] = [];
  const withoutUnit = new Map<PlannedColumn, number>();
  const words = new Map<PlannedColumn, Map<string, string>>();
  let [filled, strays] = [0, 0];
  const take = (row: SheetRow): void => {
    const { list, headings, columns } = plan;
    if (row.row <= Math.max(0, ...headings) || headings.length === 0) return;
    if (row.cells.every((cell) => cell === '')) return;
    filled += 1;
    strays += row.cells.filter((cell, at) => cell !== '' && !columns.some((each) => each.at === at)).length;
    if (list === 'skip' || list === 'unknown') return;
    const reading = takeRow(row, list, plan, map);
    faults.push(...reading.faults);
    for (const column of reading.withoutUnit) withoutUnit.set(column, (withoutUnit.get(column) ?? 0) + 1);
    for (const [column, text] of reading.words) {
      const before = words.get(column) ?? new Map<string, string>();
      if (text.length <= LONGEST_WORD && before.size < MOST_WORDS && !before.has(text.toLowerCase()))
        before.set(text.toLowerCase(), text);
      if (before.size > 0) words.set(column, before);
    }
    if (reading.row !== null) rows.push(reading.row);
  };
  const settle = (): void => {
    if (head === null) return;
    plan = sheetPlan(sheet, head, map);
    const held = head;
    head = null;
    for (const each of held) take(each);
  };
  return {
    row: (row) => {
      if (head === null) return take(row);
      head.push(row);
      if (head.length > ROWS_BEFORE_DATA) settle();
    },
    end: () => {
      settle();
      return { plan, rows, faults, withoutUnit, words, filled, strays };
    },
  };
}
