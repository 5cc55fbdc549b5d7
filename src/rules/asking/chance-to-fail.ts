import type { Interval } from '../../quantities/interval.ts';
import type { Outcome } from '../judging/outcome.ts';

/**
 * How likely an open check turns out to fail, from 0 to 1. `unknowns`: how many answers it hangs on. One that hangs on a
 * single answer fails in the share of its margin that is below zero; the more answers there are, the nearer its margin
 * lies to the middle. Where need and have are both above zero they are taken as spread by ratios: twice as much is as far
 * from the middle as half as much. A guess to order questions by, no more; common practice, no source.
 */
export function chanceToFail(
  { check, need, have, margin }: Pick<Outcome, 'check' | 'need' | 'have' | 'margin'>,
  unknowns: number,
): number {
  const [large, small] = check.sense === 'at-most' ? [have, need] : [need, have];
  const byRatio = need.low > 0 && have.low > 0 && Number.isFinite(need.high) && Number.isFinite(have.high);
  return byRatio
    ? belowZero({ low: Math.log(large.low / small.high), high: Math.log(large.high / small.low) }, unknowns)
    : belowZero(margin, unknowns);
}

function belowZero({ low, high }: Interval, unknowns: number): number {
  if (low >= 0) return 0;
  if (high <= 0) return 1;
  if (!Number.isFinite(low)) return Number.isFinite(high) ? 0.9 : 0.3;
  if (!Number.isFinite(high)) return 0.3;
  if (unknowns <= 1) return -low / (high - low);
  // a sum of numbers that are spread evenly is nearly normal
  const deviation = (high - low) / Math.sqrt(12 * unknowns);
  return normalBelow(-(low + high) / 2 / deviation);
}

/** The share of a normal distribution below so many deviations, by a logistic curve: good to 0.01. */
const normalBelow = (deviations: number): number => 1 / (1 + Math.exp(-1.702 * deviations));
