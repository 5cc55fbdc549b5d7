import type { Interval } from '../../quantities/interval.ts';
import type { Sense } from './check.ts';

/**
 * Two numbers that differ by less than this share of the larger are the same: units and sums leave noise in
 * the last digits, and a need that is exactly at the limit holds.
 */
const SAME = 1e-9;

const slack = (a: number, b: number): number => SAME * Math.max(1, Math.abs(a), Math.abs(b));

/** Is a ≤ b, the same counted as yes? Infinite ends compare as they stand. */
export const atMost = (a: number, b: number): boolean =>
  a <= b || (Number.isFinite(a) && Number.isFinite(b) && a - b <= slack(a, b));

/** Does the comparison hold for every value, and for any value, that the unknown answers may take? */
export interface Likelihood {
  readonly surely: boolean;
  readonly perhaps: boolean;
}

/** at-most: need ≤ have. at-least: the have is a floor, need ≥ have. */
export function compare(sense: Sense, need: Interval, have: Interval): Likelihood {
  return sense === 'at-most'
    ? {
        surely: atMost(need.high, have.low),
        perhaps: atMost(need.low, have.high),
      }
    : {
        surely: atMost(have.high, need.low),
        perhaps: atMost(have.low, need.high),
      };
}

/** How much is left: positive is always good. */
export function marginOf(sense: Sense, need: Interval, have: Interval): Interval {
  const [large, small] = sense === 'at-most' ? [have, need] : [need, have];
  return {
    low: ordinary(large.low - small.high, -1),
    high: ordinary(large.high - small.low, 1),
  };
}

/** Margin ÷ |need|, by the ends that a known need and have share. A need of zero gives an infinite share. */
export function relativeMarginOf(margin: Interval, need: Interval): Interval {
  const least = need.low <= 0 && need.high >= 0 ? 0 : Math.min(Math.abs(need.low), Math.abs(need.high));
  const most = Math.max(Math.abs(need.low), Math.abs(need.high));
  return {
    low: share(margin.low, margin.low < 0 ? least : most),
    high: share(margin.high, margin.high < 0 ? most : least),
  };
}

const ordinary = (value: number, sign: -1 | 1): number =>
  Number.isNaN(value) ? sign * Number.POSITIVE_INFINITY : value;

function share(margin: number, need: number): number {
  if (!Number.isFinite(margin)) return margin;
  if (need === 0) return margin === 0 ? 0 : Math.sign(margin) * Number.POSITIVE_INFINITY;
  return margin / need;
}
