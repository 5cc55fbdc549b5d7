import type { Judged } from './judged.ts';
import type { Outcome } from './outcome.ts';

/** How many near misses are worth reading. */
const MOST = 5;
/** A yes-or-no check that fails has no distance: it counts as one whole need. */
const WHOLE = 1;

/**
 * Arrangements that cannot pass, nearest first: by how much, in shares of the needs, everything falls short
 * that would have to be mended so that they pass. A family that need not be held counts only as far as its
 * hours are wanted, the nearest families first.
 */
export function nearestMisses(all: readonly Judged[], leastCoverage: number): readonly Judged[] {
  return all
    .filter(({ passes }) => passes === 'no')
    .map((judged) => ({ judged, missing: missingTo(judged, leastCoverage) }))
    .sort((a, b) => a.missing - b.missing || (a.judged.id < b.judged.id ? -1 : 1))
    .slice(0, MOST)
    .map(({ judged }) => judged);
}

function missingTo({ own, families }: Judged, leastCoverage: number): number {
  let missing = shortfall(own);
  let [held, all] = [0, 0];
  const optional: { readonly hours: number; readonly missing: number }[] = [];
  for (const { family, outcomes, verdict } of families) {
    const hours = family.hours.high;
    all += hours;
    if (verdict !== 'fails') held += hours;
    else if (family.must) {
      missing += shortfall(outcomes);
      held += hours;
    } else optional.push({ hours, missing: shortfall(outcomes) });
  }
  optional.sort((a, b) => a.missing - b.missing);
  for (const each of optional) {
    if (held >= leastCoverage * all - 1e-9) break;
    held += each.hours;
    missing += each.missing;
  }
  return missing;
}

const shortfall = (outcomes: readonly Outcome[]): number =>
  outcomes
    .filter(({ verdict }) => verdict === 'fails')
    .reduce((sum, { relativeMargin, check }) => {
      const short = -relativeMargin.high;
      return (
        sum +
        (check.categorical === true && check.unit !== 'money'
          ? WHOLE
          : Number.isFinite(short)
            ? short
            : WHOLE)
      );
    }, 0);
