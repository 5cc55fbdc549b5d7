import type { Judged } from './judged.ts';
import type { Outcome } from './outcome.ts';

/** How many near misses are worth reading. */
const MOST = 5;

/** Arrangements that cannot pass, nearest first: most hours possible, fewest checks failed, least by how much. */
export function nearestMisses(all: readonly Judged[]): readonly Judged[] {
  return all
    .filter(({ passes }) => passes === 'no')
    .map((judged) => ({ judged, failing: failing(judged) }))
    .sort(
      (a, b) =>
        b.judged.coverage.high - a.judged.coverage.high ||
        checks(a.failing) - checks(b.failing) ||
        shortfall(a.failing) - shortfall(b.failing) ||
        (a.judged.id < b.judged.id ? -1 : 1),
    )
    .slice(0, MOST)
    .map(({ judged }) => judged);
}

const failing = ({ own, families }: Judged): readonly Outcome[] =>
  [...own, ...families.flatMap(({ outcomes }) => outcomes)].filter(({ verdict }) => verdict === 'fails');

const checks = (outcomes: readonly Outcome[]): number => new Set(outcomes.map(({ check }) => check.id)).size;

const shortfall = (outcomes: readonly Outcome[]): number =>
  Math.max(0, ...outcomes.map(({ relativeMargin }) => -relativeMargin.high).filter(Number.isFinite));
