import type { Catalog, List } from './catalog.ts';
import { missingValues } from './missing.ts';

/** A value that rows of a list lack, in how many of them, and the checks that stay open without it. */
export interface Gap {
  readonly list: List;
  readonly path: string;
  readonly rows: number;
  readonly of: number;
  readonly checks: readonly string[];
}

/**
 * What the rows of each list lack, value by value: first what leaves most checks open, over all rows. A value that leaves none
 * open comes last.
 */
export function gapsOf(catalog: Catalog): readonly Gap[] {
  const gaps = new Map<string, Gap>();
  for (const { list, missing } of missingValues(catalog)) {
    for (const { path, checks } of missing) {
      const before = gaps.get(`${list} ${path}`);
      gaps.set(`${list} ${path}`, {
        list,
        path,
        rows: (before?.rows ?? 0) + 1,
        of: catalog[list].length,
        checks: [...new Set([...(before?.checks ?? []), ...checks])],
      });
    }
  }
  return [...gaps.values()].toSorted((one, other) => weight(other) - weight(one));
}

const weight = ({ path, checks, rows }: Gap): number =>
  path === SPINDLE ? Number.MAX_VALUE : checks.length * rows;

/** Without it the wrong rotaries are put on the machine, in the wrong way. */
const SPINDLE = 'spindle';

/** What the lack of a value leads to. Example: openWithout({ path: 'mass', checks: ['lift'] }) → 'lift'. */
export function openWithout({ path, checks }: Pick<Gap, 'path' | 'checks'>): string {
  if (path === SPINDLE) return 'judged as vertical meanwhile, whatever it is';
  return checks.length === 0 ? 'no check' : checks.join(', ');
}
