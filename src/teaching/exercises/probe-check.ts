import { ASSUMPTIONS } from '../../questions/assumptions.ts';
import type { CheckId } from '../../rules/checks/ids.ts';
import { type Outcome, passes } from '../../rules/judging/outcome.ts';
import type { Judged } from '../../rules/weighing/judged.ts';
import { passesTurned } from '../../rules/weighing/turned.ts';
import { distanceToLine } from './distance.ts';
import type { Probe } from './walk.ts';

export interface CheckProbe extends Probe {
  readonly outcome: Outcome;
  /** of every check of the arrangement and of its part */
  readonly outcomes: readonly Outcome[];
}

/** Where a check stands, and whether all else holds. Null: it is not about this arrangement, or is open. */
export function probedCheck(judged: Judged, check: CheckId): CheckProbe | null {
  const { own, families } = judged;
  const all = [...own, ...families.flatMap(({ outcomes }) => outcomes)];
  const outcome = all.find((each) => each.check.id === check);
  if (outcome === undefined || outcome.comparison === null || outcome.verdict === 'open') return null;
  return {
    outcome,
    outcomes: all,
    side: passes(outcome.verdict) ? 'yes' : 'no',
    share: distanceToLine(outcome),
    alone:
      all.every((each) => each.check.id === check || passes(each.verdict)) &&
      passesTurned(judged, check, ASSUMPTIONS.leastCoverage.value) !== judged.passes,
  };
}
