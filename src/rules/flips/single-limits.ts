import type { CheckId } from '../checks/ids.ts';
import type { SingleLimit } from '../decision.ts';
import type { Outcome } from '../judging/outcome.ts';
import type { Judged } from '../weighing/judged.ts';

const MOST = 3;

/**
 * Which single check, if it were dropped and nothing else, would let most arrangements through: those that fail at
 * nothing else, enough of the hours counted with the families that fail at nothing else either. Most first; none where no
 * single one does.
 */
export function singleLimits(judged: readonly Judged[], leastCoverage: number): readonly SingleLimit[] {
  const counts = new Map<CheckId, number>();
  for (const each of judged) {
    if (each.passes !== 'no') continue;
    for (const check of failingIn(each)) {
      if (passesWithout(check, each, leastCoverage)) counts.set(check, (counts.get(check) ?? 0) + 1);
    }
  }
  return [...counts]
    .map(([check, lets]) => ({ check, lets }))
    .sort((a, b) => b.lets - a.lets || (a.check < b.check ? -1 : 1))
    .slice(0, MOST);
}

const fails = ({ verdict }: Outcome): boolean => verdict === 'fails';

const failingIn = ({ own, families }: Judged): ReadonlySet<CheckId> =>
  new Set(
    [own, ...families.map(({ outcomes }) => outcomes)]
      .flat()
      .filter(fails)
      .map(({ check }) => check.id),
  );

function passesWithout(dropped: CheckId, { own, families }: Judged, leastCoverage: number): boolean {
  const holds = (outcomes: readonly Outcome[]): boolean =>
    outcomes.every((each) => !fails(each) || each.check.id === dropped);
  if (!holds(own)) return false;
  let [held, all] = [0, 0];
  for (const { family, outcomes } of families) {
    all += family.hours.high;
    if (holds(outcomes)) held += family.hours.high;
    else if (family.must) return false;
  }
  return all > 0 && held >= leastCoverage * all - 1e-9;
}
