/**
 * M. P. Groover, Fundamentals of Modern Manufacturing, ch. 22, solved problem on slab milling.
 * MEMORY, not verified; the arithmetic was redone. The book works with the rounded feed of 348 mm/min.
 */
import { describe, it } from 'vitest';
import { removalRate } from '../../src/mechanics/forces/removal-rate.ts';
import { spindleSpeed } from '../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { expectClose } from '../close-to.ts';

/** Three printed digits. */
const PRINTED = { percent: 0.5 };

describe('Groover, ch. 22 (M-9): 400 × 60 mm, cutter of 80 mm with 5 teeth, 70 m/min, 0.25 mm, 5 mm deep', () => {
  const n = spindleSpeed(70, 80);
  const vf = tableFeed(0.25, 5, n);

  it('turns at 279 rev/min', () => {
    expectClose(n, 279, PRINTED);
  });

  it('feeds 348 mm/min', () => {
    expectClose(vf, 348, PRINTED);
  });

  it('removes 104 400 mm³/min', () => {
    expectClose(removalRate(5, 60, vf) * 1000, 104_400, PRINTED);
  });
});
