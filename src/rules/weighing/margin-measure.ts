import type { Interval } from '../../quantities/interval.ts';
import { isHeldAgainstNothing } from '../../questions/held-against-nothing.ts';
import { groundOf, type World } from '../arranging/setting.ts';
import type { SetUp } from '../arranging/setting-search.ts';
import { gapsOf, type Outcome, passes } from '../judging/outcome.ts';
import { evaluateSide } from '../judging/side.ts';
import { noseAtBottom, noseAtTop } from '../sides/nose.ts';
import type { FamilyVerdict } from './judged.ts';

/**
 * How near the line an arrangement is: the lowest relative margin of its own checks and of those
 * of the families that it covers. Heights
 * are taken as shares of the Z travel, because a need near zero makes any margin look large; yes-or-no checks
 * and those that hold only with a measure have no margin worth comparing. Null: nothing to measure.
 *
 * While something is open a check may turn out to count or not: one that may hold plainly or only with a measure, one of a
 * family that may not be held. What may count bounds the margin from below, only what surely counts from above as well.
 */
export function marginMeasure(
  own: readonly Outcome[],
  families: readonly FamilyVerdict[],
  world: World,
  setUp: SetUp,
): Interval | null {
  const of = groundOf(world, setUp.candidate, setUp.setting);
  const [top, bottom] = [evaluateSide(noseAtTop, of), evaluateSide(noseAtBottom, of)];
  const travel = { low: top.low - bottom.high, high: top.high - bottom.low };
  let low = Number.POSITIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  const take = (outcomes: readonly Outcome[], isSure: boolean): void => {
    for (const outcome of outcomes) {
      if (outcome.check.categorical === true) continue;
      if (outcome.partial) {
        low = Number.NEGATIVE_INFINITY;
        continue;
      }
      const counts = countsAs(outcome);
      if (counts === 'never') continue;
      const share =
        outcome.check.marginOverTravel === true ? overTravel(outcome.margin, travel) : outcome.relativeMargin;
      // what holds plainly has room to spare, however little it may seem to have while it is open
      const least = counts === 'where it holds' ? Math.max(0, share.low) : share.low;
      // of several comparisons another one may turn out to be the tightest, but no tighter than to hold
      const isBare = outcome.verdict !== 'holds' && hasSeveral(outcome);
      low = Math.min(low, isBare ? Math.min(0, least) : least);
      if (counts === 'surely' && isSure) high = Math.min(high, share.high);
    }
  };
  take(own, true);
  for (const { outcomes, verdict } of families) take(outcomes, passes(verdict));
  return high === Number.POSITIVE_INFINITY && low === Number.POSITIVE_INFINITY ? null : { low, high };
}

/** Whether a check bears on the margin, whatever turns out; `where it holds`: only if it then holds plainly. */
function countsAs(outcome: Outcome): 'surely' | 'perhaps' | 'where it holds' | 'never' {
  const { verdict, advisory, comparison, mayHoldPlainly, margin } = outcome;
  // with a known answer it may hold after all; what nobody names is held against nothing, whatever it is
  const hangsOnUser = gapsOf(outcome).some(({ ask, path }) => ask === 'user' && !isHeldAgainstNothing(path));
  if (advisory) return hangsOnUser ? 'where it holds' : 'never';
  // of one of several kinds nothing is needed
  if (comparison === null) return Number.isFinite(margin.low) ? 'where it holds' : 'never';
  if (verdict === 'holds if') return mayHoldPlainly ? 'where it holds' : 'never';
  if (verdict === 'open') return (comparison.easings ?? []).length === 0 ? 'surely' : 'perhaps';
  return 'surely';
}

const hasSeveral = ({ check: { comparisons } }: Outcome): boolean =>
  typeof comparisons === 'function' || comparisons.length > 1;

const overTravel = (margin: Interval, travel: Interval): Interval =>
  Number.isFinite(travel.low) && Number.isFinite(travel.high) && travel.low > 0
    ? {
        low: margin.low / (margin.low < 0 ? travel.low : travel.high),
        high: margin.high / (margin.high < 0 ? travel.high : travel.low),
      }
    : { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
