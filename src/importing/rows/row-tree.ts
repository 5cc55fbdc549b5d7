import { FIELDS } from '../fields/index.ts';
import type { CellValue } from './cell-reading.ts';
import type { TakenRow } from './taken-row.ts';

/** A value of a catalog row, and the cells that it comes from. */
export interface Leaf {
  readonly value: unknown;
  /** such as `C4: 7 1/2 in` */
  readonly cells: readonly string[];
}

/** A row of a catalog as it is written: maps of maps, in the order of the keys of the catalog. */
export interface Tree {
  readonly [key: string]: Leaf | Tree;
}

export const isLeaf = (node: Leaf | Tree): node is Leaf => Array.isArray(node.cells);

/** How many entries a list of sizes has, by the path of the list. */
const LENGTHS: ReadonlyMap<string, number> = new Map(
  [...FIELDS.rotaries, ...FIELDS.machines].flatMap(({ path, cell }) =>
    cell.form === 'several' ? [[path, cell.count]] : cell.form === 'range' ? [[path, 2]] : [],
  ),
);

/** The values of a row as the catalog nests them; what a list lacks is 'unknown'. */
export function rowTree({ list, values, row }: TakenRow): Tree {
  const tree: Record<string, Leaf | Tree> = {};
  for (const { path } of FIELDS[list]) {
    const taken = values.get(path);
    if (taken === undefined || path === 'maker') continue;
    if (path.startsWith('hold.') && taken.value === null) {
      // a mounting that is impossible is one that is not named
      tree.hold ??= {};
      continue;
    }
    const note = taken.column === null ? [] : [`${taken.column}${row}: ${taken.written}`];
    const [, base, index] = /^(.*)\[(\d+)\]$/.exec(path) ?? [];
    if (base === undefined || index === undefined)
      put(tree, path.split('.'), leafOf(path, taken.value, note));
    else putEntry(tree, base, Number(index), taken.value, note);
  }
  return tree;
}

/** A row as the schema of the catalog reads it. */
export function plainRow(tree: Tree): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(tree).map(([key, node]) => [key, isLeaf(node) ? node.value : plainRow(node)]),
  );
}

const leafOf = (path: string, value: CellValue, cells: readonly string[]): Leaf | Tree =>
  // a mounting that is possible, of which nothing else is known
  path.startsWith('hold.') && value === true ? {} : { value, cells };

function put(tree: Record<string, Leaf | Tree>, steps: readonly string[], node: Leaf | Tree): void {
  const [first = '', ...others] = steps;
  if (others.length === 0) {
    tree[first] = node;
    return;
  }
  const before = tree[first];
  const inner: Record<string, Leaf | Tree> = before === undefined || isLeaf(before) ? {} : { ...before };
  put(inner, others, node);
  tree[first] = inner;
}

function putEntry(
  tree: Record<string, Leaf | Tree>,
  path: string,
  index: number,
  value: CellValue,
  cells: readonly string[],
): void {
  const before = leafAt(tree, path.split('.'));
  const length = LENGTHS.get(path) ?? 0;
  const list: unknown[] = Array.isArray(before?.value)
    ? [...before.value]
    : Array.from({ length }, () => 'unknown');
  list[index] = value;
  put(tree, path.split('.'), { value: list, cells: [...(before?.cells ?? []), ...cells] });
}

function leafAt(tree: Tree, [first = '', ...others]: readonly string[]): Leaf | undefined {
  const node = tree[first];
  if (node === undefined) return undefined;
  if (isLeaf(node)) return others.length === 0 ? node : undefined;
  return leafAt(node, others);
}
