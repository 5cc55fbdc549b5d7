import type { Catalog } from '../../catalog/catalog.ts';
import { type Candidate, candidatesOf } from '../arranging/candidates.ts';
import { builtInCase, rotaryCase } from '../facts/rotary-facts.ts';
import type { RotaryCase } from '../judging/case.ts';

/** The arrangements of these ids, without making all the others: an id begins with its machine, and names its rotary. */
export function candidatesNamed(catalog: Catalog, ids: ReadonlySet<string>): readonly Candidate[] {
  const named = [...ids].map((id) => id.split(/[+/]/));
  const machines = new Set(named.map(([machine]) => machine));
  const rotaries = new Set(named.map(([, rotary]) => rotary));
  return candidatesOf({
    ...catalog,
    machines: catalog.machines.filter(({ id }) => machines.has(id)),
    rotaries: catalog.rotaries.filter(({ id }) => rotaries.has(id)),
  }).filter(({ id }) => ids.has(id));
}

/** Every rotary and every built-in table of a catalog. */
export const tablesOfAll = ({ rotaries, machines }: Catalog): readonly RotaryCase[] => [
  ...rotaries.map(rotaryCase),
  ...machines.flatMap((row) => (row.builtIn === null ? [] : [builtInCase(row, row.builtIn)])),
];
