import type { Machine, Rotary } from '../catalog/catalog.ts';
import type { Decision } from '../rules/decision.ts';
import { type Inline, number } from './blocks/inline.ts';
import type { Path } from './blocks/path.ts';

/** A catalog row, and where it stands. */
export interface RowAt<Row> {
  readonly row: Row;
  readonly path: Path;
}

/** Null where the catalog has no such row. */
export const machineAt = ({ inputs }: Decision, id: string): RowAt<Machine> | null =>
  rowAt('machines', inputs.catalog.machines, id);

/** Null where the catalog has no such row, or where there is no rotary. */
export const rotaryAt = ({ inputs }: Decision, id: string | null): RowAt<Rotary> | null =>
  rowAt('rotaries', inputs.catalog.rotaries, id);

function rowAt<Row extends { readonly id: string }>(
  list: 'machines' | 'rotaries',
  rows: readonly Row[],
  id: string | null,
): RowAt<Row> | null {
  const index = rows.findIndex((each) => each.id === id);
  const row = rows[index];
  return row === undefined ? null : { row, path: ['inputs', 'catalog', list, index] };
}

/** A number of a row as the catalog states it. Example: rowNumber(machine, 'mm', 'footprint', 0) */
export const rowNumber = ({ path }: RowAt<unknown>, unit: string, ...keys: Path): Inline =>
  number([...path, ...keys], unit, { ifNull: 'not stated' });
