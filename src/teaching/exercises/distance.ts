import type { Interval } from '../../quantities/interval.ts';
import type { EasingRule, Sense } from '../../rules/judging/check.ts';
import type { Outcome } from '../../rules/judging/outcome.ts';
import { evaluateSide } from '../../rules/judging/side.ts';

/**
 * How far a check is from the line between passing and failing, as a share of the larger of need and have. Of one that fails the
 * nearest way out counts, with a measure too; of one that holds with a measure alone, that measure. Null: nothing is
 * compared, or a number is not known. Example: a circle of 95 mm in a swing of 100 mm → 0.05.
 */
export function distanceToLine(outcome: Outcome): number | null {
  const { check, comparison, need, have, verdict, easingRule, of } = outcome;
  if (comparison === null || verdict === 'open') return null;
  const plain = shareLeft(check.sense, need, have);
  if (plain === null) return null;
  if (verdict === 'holds') return plain;
  const eased = (rule: EasingRule): number | null => leftWith(rule, outcome);
  if (verdict === 'holds if') return easingRule === null ? null : eased(easingRule);
  const usable = (comparison.easings ?? []).filter(({ when }) => when === undefined || when(of));
  const left = [plain, ...usable.map(eased)].filter((each) => each !== null);
  return -Math.max(...left);
}

/** What is left with a measure: the least of all that it compares. Null: nothing is compared. */
function leftWith({ all }: EasingRule, { check, of }: Outcome): number | null {
  const left = all.map((each) =>
    shareLeft(each.sense ?? check.sense, evaluateSide(each.need, of), evaluateSide(each.have, of)),
  );
  const known = left.filter((each) => each !== null);
  return known.length === 0 || known.length < left.length ? null : Math.min(...known);
}

/** Positive: it holds. */
function shareLeft(sense: Sense, need: Interval, have: Interval): number | null {
  if (need.low !== need.high || have.low !== have.high) return null;
  if (!Number.isFinite(need.low) || !Number.isFinite(have.low)) return null;
  const margin = sense === 'at-most' ? have.low - need.low : need.low - have.low;
  const larger = Math.max(Math.abs(need.low), Math.abs(have.low));
  return larger === 0 ? 0 : margin / larger;
}

/**
 * How far a number is from its line, as a share of the larger of both; of shares also of what is left of the whole, whichever is
 * more: 0.9 and 0.99 leave a tenth and a hundredth. Null: there is no near. Example: distanceOf(3, 4, 'mm') → 0.25
 */
export function distanceOf(number: number, line: number, unit: string): number | null {
  const between = (a: number, b: number): number => {
    const larger = Math.max(Math.abs(a), Math.abs(b));
    return larger === 0 ? 0 : Math.abs(a - b) / larger;
  };
  if (!Number.isFinite(number) || !Number.isFinite(line)) return null;
  const plain = between(number, line);
  return unit === 'share' ? Math.max(plain, between(1 - number, 1 - line)) : plain;
}
