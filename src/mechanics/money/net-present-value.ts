import { annuityFactor } from './annuity-factor.ts';
import { discountFactor } from './discount-factor.ts';

interface Investment {
  readonly cost: number;
  /** at the end of every year */
  readonly yearlyGain: number;
  /** what it is still worth at the end */
  readonly residual: number;
  /** a year, as a share */
  readonly interest: number;
  readonly years: number;
}

/**
 * What an investment is worth today: what it brings over the years, less what is paid for it now.
 *
 * Formula: −C + A·(P/A, i, n) + R·(1 + i)^−n
 * Symbols: C paid now; A gain at the end of every year; R residual value after n years; i interest a year, as a share; n years
 * Valid: i > −1, n ≥ 0; C, A, R in one currency, A may be a loss
 * Source: L. Blank, A. Tarquin, Engineering Economy, 8th ed., present worth
 * Example: netPresentValue({ cost: 100, yearlyGain: 50, residual: 25, interest: 0.25, years: 2 }) → -12
 * Example: netPresentValue({ cost: 50000, yearlyGain: 14000, residual: 0, interest: 0.07, years: 6 }) → 16731.555237
 */
export function netPresentValue({ cost, yearlyGain, residual, interest, years }: Investment): number {
  return -cost + yearlyGain * annuityFactor(interest, years) + residual * discountFactor(interest, years);
}
