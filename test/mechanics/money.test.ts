import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { annuityFactor } from '../../src/mechanics/money/annuity-factor.ts';
import { discountFactor } from '../../src/mechanics/money/discount-factor.ts';
import { netPresentValue } from '../../src/mechanics/money/net-present-value.ts';
import { simplePayback } from '../../src/mechanics/money/simple-payback.ts';
import { yearlyHours } from '../../src/mechanics/money/yearly-hours.ts';
import { expectClose } from '../close-to.ts';

const runs = { seed: 17, numRuns: 300 };
const rate = fc.double({ min: 0, max: 0.4, noNaN: true });
const amount = fc.double({ min: -1e6, max: 1e6, noNaN: true });

describe('present values', () => {
  it('are the sum of every year on its own', () => {
    fc.assert(
      fc.property(rate, fc.integer({ min: 0, max: 40 }), (interest, years) => {
        let sum = 0;
        for (let year = 1; year <= years; year += 1) sum += discountFactor(interest, year);
        expectClose(annuityFactor(interest, years), sum, { percent: 1e-9 });
      }),
      runs,
    );
  });

  it('carried forward a year at a time end where the account stands', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        amount,
        rate,
        fc.integer({ min: 0, max: 30 }),
        (cost, yearlyGain, interest, years) => {
          let account = -cost;
          for (let year = 0; year < years; year += 1) account = account * (1 + interest) + yearlyGain;
          const worth = netPresentValue({ cost, yearlyGain, residual: 500, interest, years });
          const [today, scale] = [
            (account + 500) / (1 + interest) ** years,
            cost + Math.abs(yearlyGain) * 30,
          ];
          expectClose(worth, today, { absolute: 1e-9 * (1 + scale) });
        },
      ),
      runs,
    );
  });

  it('keep their digits at interest that is next to nothing', () => {
    expectClose(annuityFactor(1e-12, 10), 10 - 55e-12, { absolute: 1e-14 * 10 });
  });

  it('are refused where they mean nothing', () => {
    expect(() => annuityFactor(-1, 5)).toThrow(RangeError);
    expect(() => annuityFactor(0.1, -1)).toThrow(RangeError);
    expect(() => discountFactor(-1.5, 5)).toThrow(RangeError);
    expect(() => discountFactor(0.1, -1)).toThrow(RangeError);
  });
});

describe('payback', () => {
  it('is never where nothing is gained, and at once where nothing is paid', () => {
    expect(simplePayback(1000, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(simplePayback(1000, -5)).toBe(Number.POSITIVE_INFINITY);
    expect(simplePayback(0, 0)).toBe(Number.POSITIVE_INFINITY);
    expect(simplePayback(0, 5)).toBe(0);
    expect(() => simplePayback(-1, 5)).toThrow(RangeError);
  });
});

describe('hours', () => {
  it('of less than nothing are refused', () => {
    const work = {
      quantity: 1,
      lots: 1,
      setups: 1,
      setupMinutes: 1,
      cycleMinutes: 1,
      handlingMinutes: 1,
    };
    for (const key of Object.keys(work))
      expect(() => yearlyHours({ ...work, [key]: -1 }), key).toThrow(RangeError);
  });
});
