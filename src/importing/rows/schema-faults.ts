import { crossChecked } from '../../catalog/catalog-cross-checks.ts';
import { machineField } from '../../catalog/machine-schema.ts';
import { rotaryField } from '../../catalog/rotary-schema.ts';
import { faultIn } from '../../documents/fields/fault.ts';
import { oncePerUnits } from '../../documents/fields/once-per-units.ts';
import { pathText } from '../../documents/path-text.ts';
import type { SheetPlan } from '../mapping/sheet-plan.ts';
import { plainRow, rowTree } from './row-tree.ts';
import type { CellFault, TakenRow, TakenValue } from './taken-row.ts';

const SCHEMAS = { rotaries: oncePerUnits(rotaryField), machines: oncePerUnits(machineField) } as const;

export interface SchemaReading {
  /** without those that a catalog cannot hold */
  readonly values: ReadonlyMap<string, TakenValue>;
  readonly faults: readonly CellFault[];
  /** id, name or class is wrong: there is no row without */
  readonly fatal: boolean;
}

/** Holds a row against the schema of the catalog: what cannot be is told with the cell it stands in, and taken out. */
export function schemaFaults(row: TakenRow, plan: SheetPlan): SchemaReading {
  const values = new Map(row.values);
  const faults: CellFault[] = [];
  // each round takes at least one value out
  for (let round = row.values.size; round >= 0; round -= 1) {
    const found = faultsOf({ ...row, values });
    if (found.length === 0) return { values, faults, fatal: false };
    for (const fault of found) {
      const paths = [...values.keys()].filter((path) => meets(path, fault.path));
      if (paths.length === 0 || paths.some((path) => REQUIRED.has(path))) {
        const { found: what, expected } = fault;
        faults.push({
          sheet: row.sheet,
          row: row.row,
          column: null,
          heading: null,
          found: `${fault.path} ${what}`,
          expected,
        });
        return { values, faults, fatal: true };
      }
      for (const path of paths) {
        const column = values.get(path)?.column ?? null;
        const heading = plan.columns.find((each) => each.column === column)?.heading ?? null;
        faults.push({
          sheet: row.sheet,
          row: row.row,
          column,
          heading,
          found: `${path} ${fault.found}`,
          expected: fault.expected,
        });
        values.delete(path);
      }
    }
  }
  return { values, faults, fatal: false };
}

const REQUIRED = new Set(['id', 'name', 'class', 'kind']);

interface RowFault {
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

function faultsOf(row: TakenRow): readonly RowFault[] {
  const raw = plainRow(rowTree(row));
  const result = SCHEMAS[row.list]('mm').safeParse(raw);
  const issues = result.success ? [] : result.error.issues;
  const schema = issues.map((issue): RowFault => {
    const { found, expected } = faultIn(issue) ?? { found: 'does not fit', expected: issue.message };
    const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
    return { path: pathText(raw, path), found, expected };
  });
  const cross = crossChecked({ [row.list]: [raw] }).map(({ path, found, expected }) => {
    return { path: pathText(raw, path.slice(2)), found, expected };
  });
  return [...schema, ...cross];
}

/** Whether one path leads to the other, or into it. */
const meets = (one: string, other: string): boolean =>
  one === other || leads(one, other) || leads(other, one);
const leads = (from: string, to: string): boolean => to.startsWith(`${from}.`) || to.startsWith(`${from}[`);
