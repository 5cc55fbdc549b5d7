import type { Interval } from '../../quantities/interval.ts';
import type { Gap, MeasureToTake, Verdict } from '../decision.ts';
import type { Case } from './case.ts';
import type { Check, Comparison, EasingRule, Meets, Sense } from './check.ts';
import { compare, marginOf, relativeMarginOf } from './compare.ts';
import { evaluateSide, type SideValue } from './side.ts';
import { type Hanging, hangingOn } from './value.ts';

/** What one check says of one case: enough to rank by; the trace is made when somebody looks. */
export interface Outcome {
  readonly check: Check;
  readonly verdict: Verdict;
  /** null: nothing to compare, e.g. the rotary has no such axis */
  readonly comparison: Comparison | null;
  readonly need: Interval;
  readonly have: Interval;
  readonly margin: Interval;
  readonly relativeMargin: Interval;
  readonly easing: MeasureToTake | null;
  readonly easingRule: EasingRule | null;
  /** what leaves it open; nothing where it is not open */
  readonly openOn: readonly Hanging[];
  /** what the seller has to say about comparisons that enter no verdict, beside the one that is shown */
  readonly alsoAsked: readonly Hanging[];
  /** it holds only with a measure, or perhaps without: whether the measure is needed is not known */
  readonly mayHoldPlainly: boolean;
  /** the unknowns behind need and have, whatever the verdict */
  readonly hangsOn: readonly Hanging[];
  readonly advisory: boolean;
  /** not every kind of the part was looked at: once it is open, no further kind can settle it */
  readonly partial: boolean;
  readonly of: Case;
}

const ORDER: Readonly<Record<Verdict, number>> = {
  holds: 0,
  'holds if': 1,
  open: 2,
  fails: 3,
};

/** The worse of two verdicts: fails, open, holds if, holds. */
export const worse = (a: Verdict, b: Verdict): Verdict => (ORDER[a] >= ORDER[b] ? a : b);
export const passes = (verdict: Verdict): boolean => verdict === 'holds' || verdict === 'holds if';

/** Every unknown that leaves an outcome open, each once. */
export const gapsOf = ({ openOn }: Outcome): readonly Gap[] => hangingOn(openOn).gaps;

/**
 * Judges one check on one case: its worst comparison, and among equals the one with the least margin. One that
 * is open only for the seller to say stands back behind every other that is not simply well, and what it hangs
 * on is asked all the same.
 */
export function judge(check: Check, of: Case): Outcome {
  let worst: Outcome | null = null;
  const asked: Hanging[] = [];
  const comparisons = typeof check.comparisons === 'function' ? check.comparisons(of) : check.comparisons;
  for (const comparison of comparisons) {
    if (comparison.when !== undefined && !comparison.when(of)) continue;
    const meets = comparison.meets?.(of) ?? YES;
    if (meets.is === 'no') continue;
    const found = judgeComparison(check, comparison, of, meets);
    if (found.advisory) asked.push(...found.openOn);
    if (worst === null || outranks(found, worst)) worst = found;
  }
  if (worst === null) return nothingNeeded(check, of);
  return asked.length === 0 || worst.advisory ? worst : { ...worst, alsoAsked: asked };
}

const YES = { is: 'yes', on: [] } as const;

const RANK: Readonly<Record<Verdict, number>> = { holds: 0, 'holds if': 2, open: 3, fails: 4 };
const ADVISORY_RANK = 1;
const rankOf = ({ advisory, verdict }: Outcome): number => (advisory ? ADVISORY_RANK : RANK[verdict]);

function outranks(a: Outcome, b: Outcome): boolean {
  if (rankOf(a) !== rankOf(b)) return rankOf(a) > rankOf(b);
  if (a.comparison?.secondary !== b.comparison?.secondary) return b.comparison?.secondary === true;
  return a.relativeMargin.low < b.relativeMargin.low;
}

function judgeComparison(check: Check, comparison: Comparison, of: Case, meets: Meets): Outcome {
  const need = evaluateSide(comparison.need, of);
  const have = evaluateSide(comparison.have, of);
  const plain = compare(check.sense, need, have);
  const eased = plain.surely ? null : bestEasing(check.sense, comparison, of);
  const verdict = verdictOf(plain.surely, plain.perhaps, eased, meets.is === 'perhaps');
  const margin = marginOf(check.sense, need, have);
  const openOn: readonly Hanging[] =
    verdict === 'open' ? [need, have, ...(eased?.sides ?? []), ...meets.on] : [];
  return {
    check,
    verdict,
    comparison,
    need,
    have,
    margin,
    relativeMargin: relativeMarginOf(margin, need),
    easing: verdict === 'holds if' || verdict === 'open' ? (eased?.rule.measure ?? null) : null,
    easingRule: eased?.rule ?? null,
    openOn,
    alsoAsked: [],
    mayHoldPlainly: plain.perhaps || meets.is === 'perhaps',
    hangsOn: [need, have, ...meets.on],
    advisory: verdict === 'open' && isAdvisory(check, of, need, have, openOn),
    partial: false,
    of,
  };
}

function verdictOf(surely: boolean, perhaps: boolean, eased: Eased | null, onlyPerhaps: boolean): Verdict {
  if (surely) return 'holds';
  if (eased?.surely === true) return 'holds if';
  if (perhaps || eased?.perhaps === true || onlyPerhaps) return 'open';
  return 'fails';
}

/**
 * Open for want of a catalog value without which the rest still means something: the seller's to say. But not
 * where an answer that nobody knows could still make it fail, whatever the seller says.
 */
function isAdvisory(
  check: Check,
  of: Case,
  need: SideValue,
  have: SideValue,
  openOn: readonly Hanging[],
): boolean {
  if (check.advisory?.(of) === true) return true;
  if (!openOn.some(({ forSeller }) => forSeller)) return false;
  if (!openOn.some(({ forOthers }) => forOthers)) return true;
  return compare(
    check.sense,
    atBest(need, check.sense === 'at-most'),
    atBest(have, check.sense !== 'at-most'),
  ).surely;
}

/** A side at the end that the seller could make true, if nothing but that is open in it. */
function atBest(side: SideValue, lowIsBest: boolean): Interval {
  if (!side.forSeller || side.forOthers) return side;
  const end = lowIsBest ? side.low : side.high;
  return { low: end, high: end };
}

interface Eased {
  readonly rule: EasingRule;
  readonly surely: boolean;
  readonly perhaps: boolean;
  readonly sides: readonly SideValue[];
}

/** The first easing that surely helps, else the first that perhaps does. */
function bestEasing(sense: Sense, comparison: Comparison, of: Case): Eased | null {
  let perhaps: Eased | null = null;
  for (const rule of comparison.easings ?? []) {
    if (rule.when !== undefined && !rule.when(of)) continue;
    const eased = judgeEasing(sense, rule, of);
    if (eased.surely) return eased;
    if (eased.perhaps && perhaps === null) perhaps = eased;
  }
  return perhaps;
}

function judgeEasing(sense: Sense, rule: EasingRule, of: Case): Eased {
  const sides: SideValue[] = [];
  let surely = true;
  let perhaps = true;
  for (const { need, have, sense: own } of rule.all) {
    const [a, b] = [evaluateSide(need, of), evaluateSide(have, of)];
    const found = compare(own ?? sense, a, b);
    sides.push(a, b);
    surely &&= found.surely;
    perhaps &&= found.perhaps;
  }
  return { rule, surely, perhaps, sides };
}

const NOTHING: Interval = { low: 0, high: 0 };
const PLENTY: Interval = {
  low: Number.POSITIVE_INFINITY,
  high: Number.POSITIVE_INFINITY,
};

export const nothingNeeded = (check: Check, of: Case): Outcome => ({
  check,
  verdict: 'holds',
  comparison: null,
  need: NOTHING,
  have: PLENTY,
  margin: PLENTY,
  relativeMargin: PLENTY,
  easing: null,
  easingRule: null,
  openOn: [],
  alsoAsked: [],
  mayHoldPlainly: true,
  hangsOn: [],
  advisory: false,
  partial: false,
  of,
});
