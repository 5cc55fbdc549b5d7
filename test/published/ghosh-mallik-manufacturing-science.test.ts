/**
 * A. Ghosh, A. K. Mallik, Manufacturing Science, Example 4.16, p. 238: power of slab milling.
 * PRINTED (FOSSEE, Scilab textbook companion 3250, chapter 4, which prints the book's answer).
 * The book uses the approximate mean chip ½·(2·f/(N·Z))·√(t/D), and rounds the specific energy.
 */
import { describe, it } from 'vitest';
import { cuttingPower } from '../../src/mechanics/forces/cutting-power.ts';
import { greatestChipThickness } from '../../src/mechanics/forces/greatest-chip-thickness.ts';
import { meanChipThickness } from '../../src/mechanics/forces/mean-chip-thickness.ts';
import { removalRate } from '../../src/mechanics/forces/removal-rate.ts';
import { specificCuttingForce } from '../../src/mechanics/forces/specific-cutting-force.ts';
import { expectClose } from '../close-to.ts';

const cut = { width: 20, teeth: 10, diameter: 75, vf: 100, n: 60, depth: 5 };
const fz = cut.vf / (cut.n * cut.teeth);

describe('Ghosh and Mallik, Example 4.16 (M-2)', () => {
  it('the mean chip is 0.043 mm', () => {
    // the exact mean is 0.04255, the book's approximation 0.04303: 1.1 % apart
    expectClose(meanChipThickness(fz, cut.depth, cut.diameter), 0.043, {
      percent: 1.5,
    });
    expectClose(meanChipThickness(fz, cut.depth, cut.diameter), 0.04255, {
      percent: 0.02,
    });
  });

  it('half the greatest chip is the approximate mean chip of 0.043 mm', () => {
    // the book's √(t/D) for √(t/D·(1 − t/D)): 3.4 % apart at t/D = 1/15
    expectClose(greatestChipThickness(fz, cut.depth, cut.diameter) / 2, 0.043, {
      percent: 3.5,
    });
  });

  it('the specific energy 1.4·t^−0.4 J/mm³ is 4.93 at 0.043 mm', () => {
    expectClose(specificCuttingForce(1400, 0.4, 0.043) / 1000, 4.929, {
      percent: 0.02,
    });
  });

  it('the power is 817 W', () => {
    const kc = specificCuttingForce(1400, 0.4, 0.043);
    // the book rounds the specific energy to 4.9: 0.6 %
    expectClose(cuttingPower(cut.width, cut.depth, cut.vf, kc) * 1000, 817, {
      percent: 1,
    });
  });

  it('the removal rate is 166.67 mm³/s', () => {
    expectClose((removalRate(cut.width, cut.depth, cut.vf) * 1000) / 60, 166.67, { percent: 0.01 });
  });
});
