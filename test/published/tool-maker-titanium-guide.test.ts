/**
 * A cutting-tool maker's guide to machining titanium, May 2019, p. 21, Table 11, "Calculating chip
 * thickness in peripheral milling" (name withheld). Formulas PRINTED: h_max = f_z·sin AE for an angle of
 * engagement AE ≤ 90°, f_z beyond; also 2·f_z·√(a_e·(d − a_e))/d; h_m = f_z·√(a_e/d), f_z·sin(AE/2).
 * Values DERIVED. Its h_m is the chip in the middle of the cut, close to the mean for small angles.
 */
import { describe, it } from 'vitest';
import { entryAngle } from '../../src/mechanics/forces/entry-angle.ts';
import { greatestChipThickness } from '../../src/mechanics/forces/greatest-chip-thickness.ts';
import { meanChipThickness } from '../../src/mechanics/forces/mean-chip-thickness.ts';
import { expectClose } from '../close-to.ts';

const EXACT = { percent: 1e-7 };
const widths = [1, 4, 8, 10].map((ae) => ({ ae, d: 20 }));

describe('titanium guide, Table 11', () => {
  it.each(widths)('up to half the diameter both greatest chips agree: $ae of $d mm', ({ ae, d }) => {
    expectClose(greatestChipThickness(0.06, ae, d), (2 * 0.06 * Math.sqrt(ae * (d - ae))) / d, EXACT);
  });

  it('beyond half the diameter the greatest chip is the feed', () => {
    expectClose(greatestChipThickness(0.06, 10.001, 20), 0.06, EXACT);
    expectClose(greatestChipThickness(0.06, 20, 20), 0.06, EXACT);
  });

  it.each(widths)('√(ae/d) is the sine of half the angle of engagement: $ae of $d mm', ({ ae, d }) => {
    expectClose(Math.sqrt(ae / d), Math.sin((entryAngle(ae, d) * Math.PI) / 360), EXACT);
  });

  it('the chip in the middle is the mean within 2 % up to a tenth of the diameter', () => {
    expectClose(meanChipThickness(0.06, 1, 20), 0.06 * Math.sqrt(1 / 20), {
      percent: 1,
    });
    expectClose(meanChipThickness(0.06, 2, 20), 0.06 * Math.sqrt(2 / 20), {
      percent: 2,
    });
  });
});
