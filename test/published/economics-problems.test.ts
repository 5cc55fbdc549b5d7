/**
 * Problems of engineering economy as they are posted, textbooks not named; two factors of the tables in any
 * textbook; batch times of a course in production planning.
 */
import { describe, expect, it } from 'vitest';
import { discountFactor } from '../../src/mechanics/money/discount-factor.ts';
import { netPresentValue } from '../../src/mechanics/money/net-present-value.ts';
import { simplePayback } from '../../src/mechanics/money/simple-payback.ts';
import { yearlyHours } from '../../src/mechanics/money/yearly-hours.ts';
import { expectClose } from '../close-to.ts';

const CENT = { absolute: 0.005 };
const worthOf = (cost: number, yearlyGain: number, interest: number) => (years: number) =>
  netPresentValue({ cost, yearlyGain, residual: 0, interest, years });

describe('present worth', () => {
  it('of 25 000 for 3 000 a year at 8 % turns positive in the fifteenth year (printed)', () => {
    const worth = worthOf(25_000, 3000, 0.08);
    expectClose(worth(14), -267.29, CENT);
    expectClose(worth(15), 678.44, CENT);
  });

  it('of 30 000 for 4 000 a year at 8 % turns positive in the twelfth year (printed)', () => {
    const worth = worthOf(30_000, 4000, 0.08);
    expectClose(worth(11), -1444.14, CENT);
    expectClose(worth(12), 144.31, CENT);
  });

  it('of 50 000 for 14 000 a year over six years at 7 % is 16 731.56 (the problem printed, the number derived)', () => {
    expectClose(worthOf(50_000, 14_000, 0.07)(6), 16_731.56, CENT);
  });

  it('of 300 000 for 54 000 a year and 51 000 at the end at 15 % is nothing after 11.727 years (printed: about 12)', () => {
    const worth = (years: number) =>
      netPresentValue({ cost: 300_000, yearlyGain: 54_000, residual: 51_000, interest: 0.15, years });
    expect(worth(11.717)).toBeLessThan(0);
    expect(worth(11.737)).toBeGreaterThan(0);
  });

  it('of 100 for 10 a year at 12 % is never positive, though without interest it pays back in ten years (a rule)', () => {
    expect(simplePayback(100, 10)).toBe(10);
    for (const years of [10, 50, 1000]) expect(worthOf(100, 10, 0.12)(years)).toBeLessThan(0);
  });
});

describe('factors of the tables, from memory, not verified', () => {
  it('(P/F, 8 %, 10) is 0.4632 and (P/F, 10 %, 5) is 0.6209', () => {
    expectClose(discountFactor(0.08, 10), 0.4632, { absolute: 0.00005 });
    expectClose(discountFactor(0.1, 5), 0.6209, { absolute: 0.00005 });
  });
});

describe('batch times', () => {
  const work = { lots: 1, setups: 1, handlingMinutes: 0 };

  it('of 45 min for the lot and 6 min for each of 10 are 105 min (derived; the rule S + Q·T printed)', () => {
    expectClose(yearlyHours({ ...work, setupMinutes: 45, quantity: 10, cycleMinutes: 6 }) * 60, 105, {
      absolute: 1e-9,
    });
  });

  it('of two setups of 30 min and 30 min for each of 14 fill a shift of 480 min (printed)', () => {
    expect(yearlyHours({ ...work, setups: 2, setupMinutes: 30, quantity: 14, cycleMinutes: 30 })).toBe(8);
  });
});
