import type { Catalog, Stated } from './catalog.ts';

/**
 * The longest table, travel or swing that a catalog states, in mm: nothing longer has a place anywhere in it. Null where
 * it states none. Example: a table of 915 × 460, travels of 760 × 510 × 510, a swing of 200 → 915.
 */
export function longestRoom({ machines, rotaries }: Catalog): number | null {
  const stated: readonly Stated[] = [
    ...machines.flatMap((row) => [
      ...row.travel,
      ...(row.table?.size ?? []),
      ...(row.builtIn === null ? [] : [row.builtIn.swing]),
    ]),
    ...rotaries.map((row) => row.swing),
  ];
  const known = stated.filter((each) => each !== 'unknown');
  return known.length === 0 ? null : Math.max(...known);
}
