import type { Arrangement, Bounded, CheckResult, Decision, Verdict } from '../rules/decision.ts';
import type { Path } from './blocks/path.ts';

/** An arrangement that the decision lists, and where it stands. */
export interface ArrangementAt {
  readonly arrangement: Arrangement;
  readonly path: Path;
}

/** A check's result, and where it stands. */
export interface CheckAt {
  readonly result: CheckResult;
  readonly path: Path;
}

/** Undefined where the decision does not list it. */
export function arrangementAt(decision: Decision, id: string | null): ArrangementAt | undefined {
  const index = decision.arrangements.findIndex((each) => each.id === id);
  const arrangement = decision.arrangements[index];
  return arrangement === undefined ? undefined : { arrangement, path: ['arrangements', index] };
}

export const checksAt = ({ arrangement, path }: ArrangementAt): readonly CheckAt[] =>
  arrangement.checks.map((result, index) => ({
    result,
    path: [...path, 'checks', index],
  }));

const SEVERITY: Readonly<Record<Verdict, number>> = {
  fails: 0,
  open: 1,
  'holds if': 2,
  holds: 3,
};

/** The end that is worst for us; a margin of which nothing is known comes last. */
const least = (margin: Bounded): number => {
  const end = typeof margin === 'object' ? (margin?.[0] ?? null) : margin;
  return end ?? Number.POSITIVE_INFINITY;
};

/** The worst verdict first, then the least relative margin; ties stay in the order of the checks. */
export const worstFirst = (checks: readonly CheckAt[]): readonly CheckAt[] =>
  [...checks].sort(
    (a, b) =>
      SEVERITY[a.result.verdict] - SEVERITY[b.result.verdict] ||
      compare(least(a.result.relativeMargin), least(b.result.relativeMargin)),
  );

/** Plain subtraction would make NaN of two infinities. */
const compare = (a: number, b: number): number => (a < b ? -1 : a > b ? 1 : 0);

/** The first of each check: over its parts, the one that comes first. */
export const firstOfEach = (checks: readonly CheckAt[]): readonly CheckAt[] =>
  checks.filter(
    ({ result }, index) => checks.findIndex((other) => other.result.check === result.check) === index,
  );

/** The checks that the choice rests on: its own, and those of the parts that it holds. */
export const ofCoveredParts = (at: ArrangementAt): readonly CheckAt[] =>
  checksAt(at).filter(({ result }) => {
    const verdict = result.part === null ? 'holds' : at.arrangement.parts[result.part];
    return verdict === 'holds' || verdict === 'holds if';
  });

/**
 * Of the checks that hold as they are, those with the least relative margin, at the parts that the choice rests
 * on. What holds only if something is done is no matter of margin, nor is a yes or no.
 */
export function tightestChecks(at: ArrangementAt, count: number): readonly CheckAt[] {
  const measured = ofCoveredParts(at).filter(
    (each) =>
      each.result.verdict === 'holds' &&
      each.result.margin !== null &&
      each.result.categorical !== true &&
      Number.isFinite(least(each.result.relativeMargin)),
  );
  const byMargin = [...measured].sort((a, b) =>
    compare(least(a.result.relativeMargin), least(b.result.relativeMargin)),
  );
  return firstOfEach(byMargin).slice(0, count);
}
