/**
 * L. Blank, A. Tarquin, Engineering Economy, 8th ed., problems 13.32 and 13.37.
 * PRINTED, but for the discounted payback of 13.37 (DERIVED: the book says that both are above 5 years).
 */
import { describe, expect, it } from 'vitest';
import { annuityFactor } from '../../src/mechanics/money/annuity-factor.ts';
import { discountFactor } from '../../src/mechanics/money/discount-factor.ts';
import { netPresentValue } from '../../src/mechanics/money/net-present-value.ts';
import { simplePayback } from '../../src/mechanics/money/simple-payback.ts';
import { expectClose } from '../close-to.ts';

describe('problem 13.37 (C-1 to C-3): 40 000 for 10 000 a year, 90 000 for 15 000 a year', () => {
  it('pays back in 4 and in 6 years (PRINTED)', () => {
    expect(simplePayback(40_000, 10_000)).toBe(4);
    expect(simplePayback(90_000, 15_000)).toBe(6);
  });

  it('takes (P/A, 10 %, 5) as 3.7907, cut off after four places (PRINTED; rounded it is 3.7908)', () => {
    expectClose(annuityFactor(0.1, 5), 3.79079, { absolute: 0.000005 });
    expect(Math.floor(annuityFactor(0.1, 5) * 1e4) / 1e4).toBe(3.7907);
  });

  it.each([
    [40_000, 10_000, 5.36],
    [90_000, 15_000, 9.61],
  ])('with 10 %% interest %i for %i a year pays back in %f years (derived)', (cost, yearlyGain, years) => {
    const worth = (n: number) => netPresentValue({ cost, yearlyGain, residual: 0, interest: 0.1, years: n });
    expect(worth(years - 0.01)).toBeLessThan(0);
    expect(worth(years + 0.01)).toBeGreaterThan(0);
    expect(worth(5)).toBeLessThan(0);
  });
});

describe('problem 13.32 (C-4): 245 000 for 54 000 a year and 36 750 at the end, at 15 %', () => {
  const worth = (years: number) =>
    netPresentValue({ cost: 245_000, yearlyGain: 54_000, residual: 36_750, interest: 0.15, years });

  it('is worth nothing after 7.4 years, to the printed tenth (PRINTED; unrounded 7.395)', () => {
    expect(worth(7.35)).toBeLessThan(0);
    expect(worth(7.45)).toBeGreaterThan(0);
    expect(worth(7.385)).toBeLessThan(0);
    expect(worth(7.405)).toBeGreaterThan(0);
  });

  it('counts what is left at the end at 0.3555 of its value', () => {
    expectClose(discountFactor(0.15, 7.4), 0.3555, { absolute: 0.00005 });
  });
});
