import type { Interval } from '../../quantities/interval.ts';
import { groundOf, type World } from '../arranging/setting.ts';
import type { SetUp } from '../arranging/setting-search.ts';
import type { Outcome } from '../judging/outcome.ts';
import { evaluateSide } from '../judging/side.ts';
import { noseAtBottom, noseAtTop } from '../sides/nose.ts';
import type { FamilyVerdict } from './judged.ts';

/**
 * How near the line an arrangement is: the lowest relative margin of its own checks and of those
 * of the families that it covers. Heights
 * are taken as shares of the Z travel, because a need near zero makes any margin look large; yes-or-no checks
 * and those that hold only with a measure have no margin worth comparing. Null: nothing to measure.
 */
export function marginMeasure(
  own: readonly Outcome[],
  families: readonly FamilyVerdict[],
  world: World,
  setUp: SetUp,
): Interval | null {
  const of = groundOf(world, setUp.candidate, setUp.setting);
  const travel = evaluateSide(noseAtTop, of).low - evaluateSide(noseAtBottom, of).high;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  for (const outcomes of [own, ...families.map((each) => each.outcomes)]) {
    for (const { check, comparison, verdict, margin, relativeMargin, advisory, partial } of outcomes) {
      if (check.categorical === true || comparison === null || advisory || verdict === 'holds if') continue;
      if (partial) low = Number.NEGATIVE_INFINITY;
      if (partial) continue;
      const share = check.marginOverTravel === true ? overTravel(margin, travel) : relativeMargin;
      low = Math.min(low, share.low);
      high = Math.min(high, share.high);
    }
  }
  return high === Number.POSITIVE_INFINITY && low === Number.POSITIVE_INFINITY ? null : { low, high };
}

const overTravel = (margin: Interval, travel: number): Interval =>
  Number.isFinite(travel) && travel > 0
    ? { low: margin.low / travel, high: margin.high / travel }
    : { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
