/**
 * A cutting-tool maker's catalog, 2011, p. 451, "calculation example shoulder milling" in inches (name
 * withheld). PRINTED. Two slips of the page: the removal rate is cubic inches (the formula's heading says
 * cm³) and was printed as .91 where .917 rounds to .92.
 */
import { describe, it } from 'vitest';
import { meanChipThickness } from '../../src/mechanics/forces/mean-chip-thickness.ts';
import { removalRate } from '../../src/mechanics/forces/removal-rate.ts';
import { spindleSpeed } from '../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { expectClose } from '../close-to.ts';

const INCH = 25.4;
const cut = {
  diameter: 0.375 * INCH,
  teeth: 4,
  ap: 0.125 * INCH,
  ae: 0.1 * INCH,
  fz: 0.004 * INCH,
};
/** 450 surface feet a minute in m/min. */
const vc = (450 * 12 * INCH) / 1000;

describe('calculation example of shoulder milling: cutter of .375 in, 4 teeth', () => {
  it('turns at 4584 rev/min', () => {
    expectClose(spindleSpeed(vc, cut.diameter), 4584, { percent: 0.01 });
  });

  it('feeds 73.3 in/min', () => {
    expectClose(tableFeed(cut.fz, cut.teeth, spindleSpeed(vc, cut.diameter)) / INCH, 73.3, { percent: 0.1 });
  });

  it('removes .91 in³/min', () => {
    expectClose((removalRate(cut.ap, cut.ae, 73.3 * INCH) * 1000) / INCH ** 3, 0.91, { absolute: 0.01 });
  });

  it('the mean chip is .002 in', () => {
    // one printed digit; the page uses fz·√(ae/D) = .00207
    expectClose(meanChipThickness(cut.fz, cut.ae, cut.diameter) / INCH, 0.002, {
      absolute: 0.0001,
    });
  });
});
