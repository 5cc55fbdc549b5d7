import { annuityFactor } from '../../mechanics/money/annuity-factor.ts';
import { discountFactor } from '../../mechanics/money/discount-factor.ts';
import { netPresentValue } from '../../mechanics/money/net-present-value.ts';
import type { Interval } from '../../quantities/interval.ts';
import { corners } from '../facts/corners.ts';
import { roundedToCents } from './cents.ts';

/** What is paid, what comes of it, and over how long. */
export interface Terms {
  readonly capital: Interval;
  readonly residual: Interval;
  readonly interest: Interval;
  readonly years: Interval;
}

/** Net present value to the cent, at its ends. */
export function presentWorth(gain: Interval, { capital, residual, interest, years }: Terms): Interval {
  const money = [capital, gain, residual];
  // with a gain more interest is always less; with a loss it cuts both ways, and is taken apart
  const { low, high } =
    gain.low >= 0
      ? corners([...money, interest, years], ([cost = 0, yearlyGain = 0, rest = 0, i = 0, n = 0]) =>
          netPresentValue({ cost, yearlyGain, residual: rest, interest: i, years: n }),
        )
      : corners(
          [...money, interest, interest, years],
          ([cost = 0, yearly = 0, rest = 0, i = 0, j = 0, n = 0]) =>
            -cost + yearly * annuityFactor(i, n) + rest * discountFactor(j, n),
        );
  return roundedToCents({ low, high });
}

/**
 * The yearly gain at which it is worth nothing more and nothing less, never below 0.
 * Formula: (C − R·(1 + i)^−n) / (P/A, i, n).
 */
export const gainToBreakEven = ({ capital, residual, interest, years }: Terms): Interval =>
  corners(
    [capital, residual, interest, interest, years],
    ([cost = 0, rest = 0, i = 0, j = 0, n = 0]) =>
      Math.max(0, cost - rest * discountFactor(j, n)) / annuityFactor(i, n),
  );
