/**
 * Facts of the trade: common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { blockPlanRadius } from '../../src/mechanics/geometry/block-plan-radius.ts';
import { distanceFromAxis } from '../../src/mechanics/geometry/distance.ts';
import { expectClose } from '../close-to.ts';

const INCH = 25.4;
const ENVELOPE = 5 * INCH;

describe('common practice, no source: a block of 1 × 2.5 × 3 in stands inside a 5 in envelope', () => {
  it.each([
    ['flat', 3, 2.5, 1, 3.905],
    ['on its long edge', 3, 1, 2.5, 3.162],
    ['on end', 2.5, 1, 3, 2.693],
  ])('standing %s it turns inside a cylinder of 5 in, 5 in high', (_how, a, b, height, plan) => {
    const diameter = 2 * blockPlanRadius(a * INCH, b * INCH);
    expectClose(diameter, plan * INCH, { percent: 0.02 });
    expect(diameter).toBeLessThan(ENVELOPE);
    expect(height * INCH).toBeLessThan(ENVELOPE);
  });

  it('however it lies it turns and tilts about its middle inside a ball of 5 in', () => {
    const corner = distanceFromAxis(blockPlanRadius(3 * INCH, 2.5 * INCH), (1 * INCH) / 2);
    expectClose(2 * corner, 4.031 * INCH, { percent: 0.01 });
    expect(2 * corner).toBeLessThan(ENVELOPE);
  });

  it('a block of 2.5 × 3 × 4 in does not: its diagonal is longer than 5 in', () => {
    const corner = distanceFromAxis(blockPlanRadius(4 * INCH, 3 * INCH), (2.5 * INCH) / 2);
    expect(2 * corner).toBeGreaterThan(ENVELOPE);
  });
});
