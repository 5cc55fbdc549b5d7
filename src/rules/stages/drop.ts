import { CHECKS } from '../checks/index.ts';
import type { Drop } from '../decision.ts';
import type { Check } from '../judging/check.ts';
import type { Outcome } from '../judging/outcome.ts';
import type { Judged } from '../weighing/judged.ts';
import { STAGES, type StageId } from './index.ts';

/** What of an arrangement says where it drops. */
export type Droppable = Pick<Judged, 'passes' | 'own'> & {
  readonly families: readonly Pick<Judged['families'][number], 'family' | 'outcomes'>[];
};

/**
 * Where an arrangement that cannot pass drops: at the first stage after which it no longer can, charged to
 * the check of that stage that costs most hours (ties: the order of the tables). Null: it still may pass.
 */
export function dropOf(judged: Droppable, leastCoverage: number): Drop | null {
  if (judged.passes !== 'no') return null;
  for (const [index, stage] of STAGES.entries()) {
    const upTo = new Set<StageId>(STAGES.slice(0, index + 1));
    const check = canStillPass(judged, upTo, leastCoverage) ? null : costliest(judged, stage);
    if (check !== null) return { stage, check: check.id };
  }
  return null;
}

const failsWithin = (outcomes: readonly Outcome[], stages: ReadonlySet<StageId>): boolean =>
  outcomes.some(({ check, verdict }) => verdict === 'fails' && stages.has(check.stage));

function canStillPass(
  { own, families }: Droppable,
  stages: ReadonlySet<StageId>,
  leastCoverage: number,
): boolean {
  if (failsWithin(own, stages)) return false;
  let [possible, lost] = [0, 0];
  for (const { family, outcomes } of families) {
    if (!failsWithin(outcomes, stages)) possible += family.hours.high;
    else if (family.must) return false;
    else lost += family.hours.low;
  }
  return possible > 0 && possible / (possible + lost) >= leastCoverage - 1e-9;
}

/** Hours that each check of a stage costs; one about the arrangement, or about a must, costs all of them. */
function costliest({ own, families }: Droppable, stage: StageId): Check | null {
  const all = families.reduce((sum, { family }) => sum + family.hours.high, 0);
  const costs = new Map<Check, number>();
  const charge = (outcomes: readonly Outcome[], hours: number): void => {
    for (const { check, verdict } of outcomes)
      if (verdict === 'fails' && check.stage === stage)
        costs.set(check, Math.min(all, (costs.get(check) ?? 0) + hours));
  };
  charge(own, all);
  for (const { family, outcomes } of families) charge(outcomes, family.must ? all : family.hours.high);
  let worst: Check | null = null;
  for (const check of CHECKS) {
    const cost = costs.get(check);
    if (cost !== undefined && cost > (worst === null ? -1 : (costs.get(worst) ?? 0)) + 1e-9) worst = check;
  }
  return worst;
}
