import type { CheckId } from '../checks/ids.ts';
import { CHECKS } from '../checks/index.ts';
import type { RotaryCount, StageCount } from '../decision.ts';
import { STAGES, type StageId } from './index.ts';

const STAGE_OF: ReadonlyMap<CheckId, StageId> = new Map(CHECKS.map(({ id, stage }) => [id, stage]));

/** How many arrangements each stage begins and ends with, and which check dropped how many. */
export function stageCounts(counts: readonly RotaryCount[]): readonly StageCount[] {
  let left = countOf(counts);
  return STAGES.map((stage) => {
    const dropped: Partial<Record<CheckId, number>> = {};
    let here = 0;
    for (const each of counts)
      for (const [check, times] of Object.entries(each.dropped) as [CheckId, number][]) {
        if (STAGE_OF.get(check) !== stage) continue;
        dropped[check] = (dropped[check] ?? 0) + times;
        here += times;
      }
    const before = left;
    left -= here;
    return { stage, before, after: left, dropped };
  });
}

/** All of them. */
export const countOf = (counts: readonly RotaryCount[]): number =>
  counts.reduce((sum, { count }) => sum + count, 0);
