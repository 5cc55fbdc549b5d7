import type { CheckId } from '../checks/ids.ts';
import type { Drop, RotaryCount } from '../decision.ts';

interface Dropped {
  /** id of a rotary; `yew/built-in` for a machine's own table */
  readonly rotary: string;
  readonly drop: Drop | null;
}

/** What became of the arrangements of each rotary and each built-in table, in the order in which they come. */
export function byRotary(drops: readonly Dropped[]): readonly RotaryCount[] {
  const counts = new Map<
    string,
    { count: number; left: number; dropped: Partial<Record<CheckId, number>> }
  >();
  for (const { rotary, drop } of drops) {
    const known = counts.get(rotary) ?? { count: 0, left: 0, dropped: {} };
    counts.set(rotary, known);
    known.count += 1;
    if (drop === null) known.left += 1;
    else known.dropped[drop.check] = (known.dropped[drop.check] ?? 0) + 1;
  }
  return [...counts].map(([rotary, each]) => ({ rotary, ...each }));
}
