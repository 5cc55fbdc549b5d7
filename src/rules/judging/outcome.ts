import type { Interval } from '../../quantities/interval.ts';
import type { Gap, MeasureToTake, Verdict } from '../decision.ts';
import type { Case } from './case.ts';
import type { Check, Comparison, EasingRule, Sense } from './check.ts';
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
const isWorse = (a: Verdict, b: Verdict): boolean => ORDER[a] > ORDER[b];
export const passes = (verdict: Verdict): boolean => verdict === 'holds' || verdict === 'holds if';

/** Every unknown that leaves an outcome open, each once. */
export const gapsOf = ({ openOn }: Outcome): readonly Gap[] => hangingOn(openOn).gaps;

/** Judges one check on one case: its worst comparison, and among equals the one with the least margin. */
export function judge(check: Check, of: Case): Outcome {
  let worst: Outcome | null = null;
  const comparisons = typeof check.comparisons === 'function' ? check.comparisons(of) : check.comparisons;
  for (const comparison of comparisons) {
    if (comparison.when !== undefined && !comparison.when(of)) continue;
    const meets = comparison.meets?.(of) ?? 'yes';
    if (meets === 'no') continue;
    const found = judgeComparison(check, comparison, of, meets === 'perhaps');
    if (worst === null || outranks(found, worst)) worst = found;
  }
  return worst ?? nothingNeeded(check, of);
}

function outranks(a: Outcome, b: Outcome): boolean {
  if (a.verdict !== b.verdict) return isWorse(a.verdict, b.verdict);
  if (a.comparison?.secondary !== b.comparison?.secondary) return b.comparison?.secondary === true;
  return a.relativeMargin.low < b.relativeMargin.low;
}

function judgeComparison(check: Check, comparison: Comparison, of: Case, onlyPerhaps: boolean): Outcome {
  const need = evaluateSide(comparison.need, of);
  const have = evaluateSide(comparison.have, of);
  const plain = compare(check.sense, need, have);
  const eased = plain.surely ? null : bestEasing(check.sense, comparison, of);
  const verdict = verdictOf(plain.surely, plain.perhaps, eased, onlyPerhaps);
  const margin = marginOf(check.sense, need, have);
  const openOn: readonly Hanging[] =
    verdict === 'open' ? [need, have, ...(eased?.sides ?? []), ...(of.part?.kinds ?? [])] : [];
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
    advisory: verdict === 'open' && isAdvisory(check, of, openOn),
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

/** Open for want of a catalog value without which the rest still means something: the seller's to say. */
const isAdvisory = (check: Check, of: Case, openOn: readonly Hanging[]): boolean =>
  check.advisory?.(of) === true || openOn.some(({ forSeller }) => forSeller);

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
  advisory: false,
  partial: false,
  of,
});
