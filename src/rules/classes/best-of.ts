import type { Tally } from '../decision-classes.ts';
import { bounded } from '../judging/value.ts';
import type { Judged } from '../weighing/judged.ts';
import { passing } from './rules/catalog.ts';

/** The best of some arrangements as the user ranks them; the nearest miss where none passes. */
export type BestOf = (some: readonly Judged[]) => Judged | null;

/** How many there are, how many pass, and the best of them. */
export function tallyOf(some: readonly Judged[], bestOf: BestOf): Tally {
  const best = bestOf(some);
  return {
    count: some.length,
    passing: bounded(passing(some).value),
    best: best?.id ?? null,
    bestPasses: best?.passes ?? null,
  };
}
