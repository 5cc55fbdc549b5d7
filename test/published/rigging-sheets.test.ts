/**
 * Sling angles and eye bolts from the sheets of rigging suppliers and a university's rigging page (REPRINT),
 * with rules of 29 CFR 1910.184 (PRINTED) and ASME B30.9 (REPRINT); lifting in teams from memory.
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
    [80, 1.015],
    [75, 1.035],
    [70, 1.064],
    [65, 1.104],
    [60, 1.155],
    [55, 1.221],
    [50, 1.305],
    // printed 1.414, the square root of two
    [45, Math.SQRT2],
    [40, 1.555],
    [35, 1.742],
    [30, 2.0],
  ])('at %d degrees above level the load factor is %d', (angle, factor) => {
    expectClose(leg(2, angle), factor, { absolute: 0.002 });
  });

  it('within five degrees of upright counts as upright, where the table prints 1.004 at 85', () => {
    expect([85, 86, 90].map((angle) => leg(2, angle))).toEqual([1, 1, 1]);
    expectClose(leg(2, 85), 1.004, { absolute: 0.005 });
    expect(leg(2, 84)).toBeGreaterThan(1.005);
  });

  it('S-1, S-2, S-3: 1000 lb on two legs', () => {
    expectClose(leg(1000, 60), 577, { absolute: 1 });
    expectClose(leg(1000, 45), 707, { absolute: 1 });
    expectClose(leg(1000, 30), 1000, { absolute: 0.5 });
  });

  it('S-5: a choker of 8000 lb with a hook 84 in over legs of 96 in keeps 7000 lb', () => {
    const angle = (Math.asin(84 / 96) * 180) / Math.PI;
    expectClose(8000 / leg(2, angle), 7000, { absolute: 0.5 });
  });

  it('S-6: legs of 10 ft, a hook 5 ft up: 1000 lb a leg where each carries 500', () => {
    expectClose(leg(1000, (Math.asin(5 / 10) * 180) / Math.PI + 1e-9), 1000, { absolute: 0.5 });
  });

  it('S-8: flatter than 30 degrees is refused', () => {
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

describe('shouldered eye bolts', () => {
  it.each([
    [0, 1550],
    [5, 1550],
    [15, 1240],
    [30, 1007.5],
    [45, 465],
    // prints 388, rounded up
    [90, 387.5],
  ])('a bolt of 1550 lb pulled at %d degrees keeps %d lb', (angle, left) => {
    expectClose(1550 * eyeBoltRating(angle), left, { absolute: 0.01 });
  });

  it('at 45 degrees a sling keeps 71 percent and an eye bolt 30', () => {
    expectClose(1 / leg(2, 45), 0.71, { absolute: 0.005 });
    expect(eyeBoltRating(45)).toBe(0.3);
  });

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
