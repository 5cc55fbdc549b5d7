import type { CheckId } from '../checks/ids.ts';
import type { Drop, StageCount } from '../decision.ts';
import { STAGES } from './index.ts';

/** How many arrangements each stage begins and ends with, and which check dropped how many. */
export function stageCounts(drops: readonly (Drop | null)[]): readonly StageCount[] {
  let left = drops.length;
  return STAGES.map((stage) => {
    const here = drops.filter((drop) => drop?.stage === stage);
    const dropped: Partial<Record<CheckId, number>> = {};
    for (const drop of here) if (drop !== null) dropped[drop.check] = (dropped[drop.check] ?? 0) + 1;
    const before = left;
    left -= here.length;
    return { stage, before, after: left, dropped };
  });
}
