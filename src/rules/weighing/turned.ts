import type { CheckId } from '../checks/ids.ts';
import { worstOf } from '../judging/judge-family.ts';
import { type Outcome, passes } from '../judging/outcome.ts';
import { coverageOf } from './coverage.ts';
import { type Judged, passesWhen } from './judged.ts';

/**
 * Whether an arrangement would pass if one check said the opposite: failed where it holds, held where it fails; everything else
 * as it is. `least`: the least share of the hours that it must cover.
 */
export function passesTurned(judged: Judged, check: CheckId, least: number): Judged['passes'] {
  const turned = (outcomes: readonly Outcome[]): readonly Outcome[] =>
    outcomes.map((each) =>
      each.check.id === check ? { ...each, verdict: passes(each.verdict) ? 'fails' : 'holds' } : each,
    );
  const families = judged.families.map((each) => {
    const outcomes = turned(each.outcomes);
    return { ...each, outcomes, verdict: worstOf(outcomes) };
  });
  return passesWhen(turned(judged.own), families, coverageOf(families), least);
}
