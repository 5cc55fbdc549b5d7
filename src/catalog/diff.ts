import { type Catalog, FEATURES, type List, type Machine, type Rotary } from './catalog.ts';
import { type RowValue, valuesByPath } from './row-values.ts';

export interface ChangedValue {
  /** within the row, e.g. `payload.tilted`, `source.date` */
  readonly path: string;
  /** in base units; null: there is none */
  readonly before: RowValue;
  readonly after: RowValue;
}

export interface RowDiff {
  readonly list: List;
  readonly id: string;
  readonly change: 'added' | 'removed' | 'changed';
  /** of a row that is there in both */
  readonly values: readonly ChangedValue[];
  /** of a row that is new: an id of the same values that is gone */
  readonly renamedFrom?: string;
}

export interface CatalogDiff {
  readonly format: 'fivesides-catalog-diff/1';
  readonly currency: { readonly before: string; readonly after: string };
  readonly rows: readonly RowDiff[];
}

/** Two values that are read from different units differ by rounding only. */
const ROUNDING = 1e-9;

/**
 * What is otherwise in one catalog than in another: rows by their ids, values in base units, so that the same value in
 * other units is no change. Where a row stands in its files does not count.
 */
export function catalogDiff(before: Catalog, after: Catalog): CatalogDiff {
  return {
    format: 'fivesides-catalog-diff/1',
    currency: { before: before.currency, after: after.currency },
    rows: [...listDiff('rotaries', before, after), ...listDiff('machines', before, after)],
  };
}

function listDiff(list: List, before: Catalog, after: Catalog): readonly RowDiff[] {
  const [old, now] = [valuesById(before[list]), valuesById(after[list])];
  const gone = [...old].filter(([id]) => !now.has(id));
  const removed = gone.map(([id]): RowDiff => ({ list, id, change: 'removed', values: [] }));
  const others = [...now].flatMap(([id, values]): readonly RowDiff[] => {
    const known = old.get(id);
    if (known === undefined) {
      const same = gone.find(([, each]) => isSameThing(each, values));
      const renamed = same === undefined ? {} : { renamedFrom: same[0] };
      return [{ list, id, change: 'added', values: [], ...renamed }];
    }
    const changed = changedValues(known, values);
    return changed.length === 0 ? [] : [{ list, id, change: 'changed', values: changed }];
  });
  return [...others, ...removed];
}

/** What it is called and which paper says so is no value of the thing itself. */
const isOfNoThing = (path: string): boolean => path === 'name' || isSource(path);
const isSource = (path: string): boolean => path.startsWith('source.');

interface Values {
  readonly at: ReadonlyMap<string, RowValue>;
  readonly paths: readonly string[];
  /** paths of what these values are in, such as `payload` and `tilt` */
  readonly wholes: ReadonlySet<string>;
}

const valuesById = (rows: readonly (Rotary | Machine)[]): ReadonlyMap<string, Values> =>
  new Map(rows.map((row) => [row.id, valuesOf(row)]));

/** Where it stands in its files is no value of a row; where it comes from is one. */
function valuesOf({ id: _id, from: { maker, document, date }, ...row }: Rotary | Machine): Values {
  const at = valuesByPath({ ...row, source: { maker, document, date } });
  const paths = [...at.keys()];
  return { at, paths, wholes: new Set(paths.flatMap(wholesOf)) };
}

/** What a value is in, the nearest first. Example: 'clearance[0].adds' → ['clearance[0]', 'clearance']. */
const wholesOf = (path: string): readonly string[] =>
  [...path.matchAll(/[.[]/g)].map(({ index }) => path.slice(0, index)).reverse();

/** A range or a map that is not known stands for each of its values. */
function valueAt({ at }: Values, path: string): RowValue {
  const own = at.get(path);
  if (own !== undefined) return own;
  const whole = wholesOf(path).find((each) => at.has(each));
  return whole === undefined ? null : (at.get(whole) ?? null);
}

function changedValues(before: Values, after: Values): readonly ChangedValue[] {
  const all = [...new Set([...after.paths, ...before.paths])].filter((path) => differAt(path, before, after));
  return [...all.filter((path) => !isSource(path)), ...all.filter(isSource)].map((path) => ({
    path,
    before: valueAt(before, path),
    after: valueAt(after, path),
  }));
}

/** Every row that is gone is held against each that is new: the first value that is otherwise ends it. */
const isSameThing = (one: Values, other: Values): boolean =>
  ![one, other].some(({ paths }) => paths.some((path) => !isOfNoThing(path) && differAt(path, one, other)));

/** A whole that is not known on one side is told by its parts. */
const differAt = (path: string, one: Values, other: Values): boolean =>
  !one.wholes.has(path) && !other.wholes.has(path) && !isSame(valueAt(one, path), valueAt(other, path));

function isSame(one: RowValue, other: RowValue): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  return Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
}

/** Whether null means, at this path, that something is not offered. Example: isOffer('features.spindleProbe') → true. */
export const isOffer = (path: string): boolean => FEATURES.some((each) => path === `features.${each}`);
