import type { Interval } from '../../quantities/interval.ts';
import type { Case, Room } from './case.ts';
import { keyOf, once } from './memo.ts';
import { type Term, termEnds, type Use } from './term.ts';
import { type Hanging, hangingOn, type Value } from './value.ts';

/**
 * One side of a comparison, the need or the have: the greatest or least over its terms, or the width
 * between the greatest of some and the least of others (their unknowns taken as independent: a width may
 * say *open* too often, never too seldom).
 */
export interface Side {
  /** what it depends on: evaluated once for each combination of these; null: made for one case only */
  readonly of: readonly Room[] | null;
  readonly fold: 'greatest' | 'least' | 'width';
  readonly terms: (of: Case) => readonly Term[];
  /** the far ends, for a width */
  readonly less?: (of: Case) => readonly Term[];
}

export const greatest = (of: Side['of'], terms: Side['terms']): Side => ({
  of,
  fold: 'greatest',
  terms,
});
export const least = (of: Side['of'], terms: Side['terms']): Side => ({
  of,
  fold: 'least',
  terms,
});
export const width = (of: readonly Room[], terms: Side['terms'], less: Side['terms']): Side => ({
  of,
  fold: 'width',
  terms,
  less,
});

export interface SideValue extends Interval, Hanging {}

/** A term with the values of its inputs, for the trace. */
export interface EvaluatedTerm extends Interval {
  readonly term: Term;
  readonly values: Readonly<Record<string, Value>>;
}

/** The side's ends on this case. No terms at all: nothing is needed, so −∞ (greatest) or +∞ (least). */
export function evaluateSide(side: Side, of: Case): SideValue {
  if (side.of === null) return evaluateFresh(side, of);
  const { memo, part } = of;
  return once(memo, memo.sides, side, keyOf(side.of, of.keys), part?.slot ?? 0, () =>
    evaluateFresh(side, of),
  );
}

function evaluateFresh(side: Side, of: Case): SideValue {
  const terms = side.terms(of).map((each) => evaluateTerm(each, of));
  if (side.fold !== 'width') {
    const { low, high } = folded(side.fold, terms);
    return sideValue(low, high, terms);
  }
  const far = (side.less?.(of) ?? []).map((each) => evaluateTerm(each, of));
  const upper = folded('greatest', terms);
  const lower = folded('least', far);
  return sideValue(upper.low - lower.high, upper.high - lower.low, [...terms, ...far]);
}

/** A term's ends with the values that went in. */
export function evaluateTerm(term: Term, of: Case): EvaluatedTerm {
  const values: Record<string, Value> = {};
  for (const key in term.uses) values[key] = (term.uses[key] as Use).input.read(of);
  const { low, high } = termEnds(term, values);
  return { term, values, low, high };
}

/** The greatest (least) over terms: each end is the greatest (least) of the ends. */
export function folded(fold: 'greatest' | 'least', terms: readonly Interval[]): Interval {
  const pick = fold === 'greatest' ? Math.max : Math.min;
  const start = fold === 'greatest' ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  let low = start;
  let high = start;
  for (const each of terms) {
    low = pick(low, each.low);
    high = pick(high, each.high);
  }
  return { low, high };
}

/** The terms that decide: for a greatest the one with the highest end, for a least the lowest. */
export function bindingTerms(side: Side, of: Case): readonly EvaluatedTerm[] {
  const terms = side.terms(of).map((each) => evaluateTerm(each, of));
  if (side.fold === 'least')
    return pickOne(terms, (a, b) => a.low < b.low || (a.low === b.low && a.high < b.high));
  const upper = pickOne(terms, (a, b) => a.high > b.high || (a.high === b.high && a.low > b.low));
  if (side.fold === 'greatest') return upper;
  const far = (side.less?.(of) ?? []).map((each) => evaluateTerm(each, of));
  return [...upper, ...pickOne(far, (a, b) => a.low < b.low)];
}

function pickOne(
  terms: readonly EvaluatedTerm[],
  better: (a: EvaluatedTerm, b: EvaluatedTerm) => boolean,
): readonly EvaluatedTerm[] {
  const first = terms[0];
  if (first === undefined) return [];
  return [terms.reduce((best, each) => (better(each, best) ? each : best), first)];
}

const NOTHING_OPEN: Hanging = { gaps: [], forSeller: false, forOthers: false };

/** Its ends and what they hang on; a side that comes out exact hangs on nothing. */
function sideValue(low: number, high: number, terms: readonly EvaluatedTerm[]): SideValue {
  const hanging =
    low === high ? NOTHING_OPEN : hangingOn(terms.flatMap((each) => Object.values(each.values)));
  return {
    low,
    high,
    forSeller: hanging.forSeller,
    forOthers: hanging.forOthers,
    get gaps() {
      return hanging.gaps;
    },
  };
}
