import { describe, expect, it } from 'vitest';
import { annuityFactor } from '../../../src/mechanics/money/annuity-factor.ts';
import { discountFactor } from '../../../src/mechanics/money/discount-factor.ts';
import { netPresentValue } from '../../../src/mechanics/money/net-present-value.ts';
import { simplePayback } from '../../../src/mechanics/money/simple-payback.ts';
import { yearlyHours } from '../../../src/mechanics/money/yearly-hours.ts';
import { BELOW, WITHOUT_BOUND } from './bounds.ts';

const nothing = { quantity: 0, lots: 0, setups: 0, setupMinutes: 0, cycleMinutes: 0, handlingMinutes: 0 };

describe('on the edge of what can be', () => {
  it.each([
    ['no years are worth nothing', () => annuityFactor(0.1, 0), 0],
    ['no years without interest either', () => annuityFactor(0, 0), 0],
    ['interest just above −1, for a year', () => annuityFactor(-0.5, 1), 2],
    ['today is worth what it is', () => discountFactor(0.1, 0), 1],
    ['without interest it stays so', () => discountFactor(0, 5), 1],
    ['losing half a year', () => discountFactor(-0.5, 1), 2],
    ['what costs nothing is paid back at once', () => simplePayback(0, 5), 0],
    ['what gains nothing never is', () => simplePayback(5, 0), WITHOUT_BOUND],
    ['no work takes no hours', () => yearlyHours(nothing), 0],
    [
      'what is paid, gained and left over',
      () => netPresentValue({ cost: 100, yearlyGain: 0, residual: 100, interest: 0.25, years: 1 }),
      -20,
    ],
  ])('%s', (_what, compute, value) => {
    const worth = compute();
    if (value === WITHOUT_BOUND) expect(worth).toBe(value);
    else expect(worth).toBeCloseTo(value, 12);
  });
});

describe('one number beyond it', () => {
  it.each([
    ['interest that takes all', () => annuityFactor(-1, 5)],
    ['interest that takes more', () => annuityFactor(-1 + BELOW, 5)],
    ['years', () => annuityFactor(0.1, BELOW)],
    ['years without interest', () => annuityFactor(0, BELOW)],
    ['interest that takes all of it at once', () => discountFactor(-1, 5)],
    ['years until then', () => discountFactor(0.1, BELOW)],
    ['a price', () => simplePayback(BELOW, 5)],
    ['parts', () => yearlyHours({ ...nothing, quantity: BELOW })],
    ['handling', () => yearlyHours({ ...nothing, handlingMinutes: BELOW })],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});
