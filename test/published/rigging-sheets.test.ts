/**
 * Sling angles and eye bolts from the sheets of rigging suppliers (names withheld) and a university's rigging page
 * (orcbs.msu.edu, hitches and crane loads; REPRINT), with rules of 29 CFR 1910.184(b) (PRINTED) and ASME B30.9
 * (REPRINT); DIN 580 and lifting in teams from memory. ASME B18.15 and B30.26 have no check: their tables could not
 * be read, the two disagree, and the maker's data govern.
 */
import { describe, expect, it } from 'vitest';
import { eyeBoltRating } from '../../src/mechanics/lifting/eye-bolt-rating.ts';
import { isUsableSlingAngle, slingLegTension } from '../../src/mechanics/lifting/sling-leg-tension.ts';
import { teamLiftLimit } from '../../src/mechanics/lifting/team-lift-limit.ts';
import { unequalSlingLegs } from '../../src/mechanics/lifting/unequal-sling-legs.ts';
import { expectClose } from '../close-to.ts';

const leg = (load: number, angle: number, legs = 2): number => slingLegTension({ load, legs, angle });

describe('sling legs', () => {
  // two legs under a load of two carry the printed factor each; 65, 40 and 35 degrees are printed rounded otherwise
  it.each([
    [90, 1.0, 1],
    [80, 1.015, 0.985],
    [75, 1.035, 0.966],
    [70, 1.064, 0.94],
    [65, 1.104, 0.906],
    [60, 1.155, 0.866],
    [55, 1.221, 0.819],
    [50, 1.305, 0.766],
    // printed 1.414 and .707, the square root of two and of a half
    [45, Math.SQRT2, Math.SQRT1_2],
    [40, 1.555, 0.643],
    [35, 1.742, 0.574],
    [30, 2.0, 0.5],
  ])(
    'at %d degrees above level the load factor is %d, the reduction %d (two suppliers, REPRINT)',
    (angle, factor, reduction) => {
      expectClose(leg(2, angle), factor, { absolute: 0.002 });
      expectClose(1 / leg(2, angle), reduction, { absolute: 0.0006 });
    },
  );

  it('S-8: within five degrees of upright counts as upright (1910.184(b)), where the table prints 1.004 at 85', () => {
    expect([85, 86, 90].map((angle) => leg(2, angle))).toEqual([1, 1, 1]);
    expectClose(leg(2, 85), 1.004, { absolute: 0.005 });
    expect(leg(2, 84)).toBeGreaterThan(1.005);
  });

  // a supplier takes the factor at 60 degrees as 1.154, cut off; the sum of both legs is the university's
  it.each([
    ['S-1', 60, 577, 1154],
    ['S-2', 45, 707, undefined],
    ['S-3', 30, 1000, 2000],
  ])('%s: 1000 lb on two legs at %d degrees are %d lb a leg (REPRINT)', (_id, angle, each, both) => {
    expectClose(leg(1000, angle), each, { absolute: 0.5 });
    if (both !== undefined) expectClose(2 * leg(1000, angle), both, { absolute: 1 });
  });

  it('S-5: a choker of 8000 lb with a hook 84 in over legs of 96 in keeps 7000 lb (REPRINT)', () => {
    const angle = (Math.asin(84 / 96) * 180) / Math.PI;
    expectClose(8000 / leg(2, angle), 7000, { absolute: 0.5 });
  });

  it('S-6: legs of 10 ft, a hook 5 ft up: 1000 lb a leg where each carries 500 (REPRINT)', () => {
    expectClose(leg(1000, (Math.asin(5 / 10) * 180) / Math.PI + 1e-9), 1000, { absolute: 0.5 });
  });

  it('S-8: flatter than 30 degrees is refused (ASME B30.9, REPRINT)', () => {
    expect(isUsableSlingAngle(29)).toBe(false);
    expect(() => leg(1000, 29)).toThrow(RangeError);
  });

  it('of three or four legs only two are sure to carry (from memory)', () => {
    expect(leg(1000, 60, 4)).toBe(leg(1000, 60, 2));
    expect(leg(1000, 60, 3)).toBe(leg(1000, 60, 2));
    expect(leg(1000, 60, 1)).toBe(1000);
  });

  it('S-7: unequal legs, whose upright parts add up to the load (DERIVED)', () => {
    const [first, second] = unequalSlingLegs({ load: 1000, first: 0.4, second: 0.8, height: 0.9 });
    expectClose(first, 729.55, { absolute: 0.05 });
    expectClose(second, 445.98, { absolute: 0.05 });
    expectClose((first * 0.9) / Math.hypot(0.4, 0.9) + (second * 0.9) / Math.hypot(0.8, 0.9), 1000, {
      absolute: 1e-6,
    });
  });
});

describe('shouldered eye bolts (two rigging pages, REPRINT)', () => {
  it.each([
    [0, 1550],
    [5, 1550],
    [15, 1240],
    [30, 1007.5],
    [45, 465],
    // prints 388, rounded up
    [90, 387.5],
  ])('a 3/8 in bolt of 1550 lb pulled at %d degrees keeps %d lb', (angle, left) => {
    expectClose(1550 * eyeBoltRating(angle), left, { absolute: 0.01 });
  });

  it('at 45 degrees a sling keeps 71 percent and an eye bolt 30', () => {
    expectClose(1 / leg(2, 45), 0.71, { absolute: 0.005 });
    expect(eyeBoltRating(45)).toBe(0.3);
  });

  // its pounds are rounded, 566.5 to 567
  it.each([
    ['M12', 2266, 567],
    ['M16', 3520, 880],
    ['M20', 6292, 1573],
  ])(
    'another supplier’s metric %s of %d lb keeps %d lb at 45 degrees, 25 percent where ours keeps 30 (REPRINT)',
    (_size, axial, left) => {
      expectClose(axial * eyeBoltRating(45.1), left, { absolute: 0.5 + 1e-9 });
      expectClose((axial * eyeBoltRating(45)) / left, 30 / 25, { percent: 0.1 });
    },
  );

  // kg straight, and kg a bolt on two legs at 45 degrees, which is what a sling keeps, rounded to the next ten or so
  it.each([
    ['M8', 140, 100],
    ['M10', 230, 170],
    ['M12', 340, 240],
    ['M16', 700, 500],
    ['M20', 1200, 860],
    ['M24', 1800, 1290],
    ['M30', 3200, 2300],
  ])(
    'DIN 580 %s: %d kg straight, %d kg at 45 degrees; ours asks for more bolt (from memory, not verified)',
    (_size, axial, atAngle) => {
      expectClose(axial / leg(2, 45), atAngle, { percent: 4.5 });
      expect(axial * eyeBoltRating(45)).toBeLessThan(atAngle / 2);
    },
  );

  it('between two rows counts as the lower one', () => {
    expect(eyeBoltRating(5.1)).toBe(0.8);
    expect(eyeBoltRating(46)).toBe(0.25);
    expect(() => eyeBoltRating(91)).toThrow(RangeError);
  });
});

describe('lifting in teams (from memory, not verified)', () => {
  it('two people lift two thirds of what both may, three a half', () => {
    expectClose(teamLiftLimit(15, 2), 20, { absolute: 1e-9 });
    expectClose(teamLiftLimit(20, 3), 30, { absolute: 1e-9 });
    expect(teamLiftLimit(20, 1)).toBe(20);
    expect(teamLiftLimit(20, 6)).toBe(teamLiftLimit(20, 3));
  });
});
