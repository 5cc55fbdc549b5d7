import type { Outcome } from '../judging/outcome.ts';
import type { Judged } from './judged.ts';

/** How many near misses are worth reading. */
const MOST = 5;
/** A yes-or-no check that fails has no distance: it counts as one whole need. */
const WHOLE = 1;

/** How far something falls short, in shares of the needs: by its worst check, and by all of them together. */
interface Shortfall {
  readonly worst: number;
  readonly sum: number;
}

const NONE: Shortfall = { worst: 0, sum: 0 };
const both = (a: Shortfall, b: Shortfall): Shortfall => ({
  worst: Math.max(a.worst, b.worst),
  sum: a.sum + b.sum,
});

/**
 * Arrangements that cannot pass, nearest first: by how much what would have to be mended falls short, first
 * by the worst of it, then by all of it, then by the hours that they hold as they are. A family that need not
 * be held counts only as far as its hours are wanted, the nearest families first.
 */
export function nearestMisses(all: readonly Judged[], leastCoverage: number): readonly Judged[] {
  return all
    .filter(({ passes }) => passes === 'no')
    .map((judged) => ({ judged, missing: missingTo(judged, leastCoverage) }))
    .sort(
      (a, b) =>
        nearly(a.missing.worst - b.missing.worst) ||
        nearly(a.missing.sum - b.missing.sum) ||
        nearly(b.judged.coverage.high - a.judged.coverage.high) ||
        (a.judged.id < b.judged.id ? -1 : 1),
    )
    .map(({ judged }) => judged)
    .filter(isFirstOfItsRotary)
    .slice(0, MOST);
}

/** The same rotary on the next machine mostly misses for the same reason: the nearest of them is enough. */
const isFirstOfItsRotary = (judged: Judged, at: number, all: readonly Judged[]): boolean =>
  all.findIndex(({ setUp }) => setUp.candidate.rotary.key === judged.setUp.candidate.rotary.key) === at;

/** Sums in another order leave noise in the last digits: the order of the families must not matter. */
const nearly = (difference: number): number => (Math.abs(difference) < 1e-9 ? 0 : difference);

function missingTo({ own, families }: Judged, leastCoverage: number): Shortfall {
  let missing = shortfall(own);
  let [held, all] = [0, 0];
  const optional: { readonly hours: number; readonly missing: Shortfall }[] = [];
  for (const { family, outcomes, verdict } of families) {
    const hours = family.hours.high;
    all += hours;
    if (verdict !== 'fails') held += hours;
    else if (family.must) {
      missing = both(missing, shortfall(outcomes));
      held += hours;
    } else optional.push({ hours, missing: shortfall(outcomes) });
  }
  optional.sort(
    (a, b) =>
      nearly(a.missing.worst - b.missing.worst) || nearly(a.missing.sum - b.missing.sum) || b.hours - a.hours,
  );
  for (const each of optional) {
    if (held >= leastCoverage * all - 1e-9) break;
    held += each.hours;
    missing = both(missing, each.missing);
  }
  return missing;
}

const shortfall = (outcomes: readonly Outcome[]): Shortfall =>
  outcomes
    .filter(({ verdict }) => verdict === 'fails')
    .map(shortOf)
    .reduce(both, NONE);

function shortOf({ relativeMargin, check }: Outcome): Shortfall {
  const short = -relativeMargin.high;
  const isWhole = (check.categorical === true && check.unit !== 'money') || !Number.isFinite(short);
  const by = isWhole ? WHOLE : short;
  return { worst: by, sum: by };
}
