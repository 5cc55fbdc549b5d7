/**
 * "Planning moves", user concepts in the manual of a general open-source machine controller. PRINTED: with
 * the acceleration already halved, moves shorter than F²/A never reach the feed F: 0.1 in for 1 in/s and
 * 10 in/s². For 0.5 in/s the page prints 5²/100 = 25/100 = 0.025: the result is right, the working is 0.5²/10.
 * The other values are DERIVED from motion at constant acceleration. The speed round a corner by junction deviation
 * (L-10, planner.c of an open-source motion controller) has no formula here: no answer and no seller's sheet holds
 * that setting of a control, so nothing is decided by it.
 */
import { describe, it } from 'vitest';
import { blocksPerSecond } from '../../src/mechanics/contouring/blocks-per-second.ts';
import { stoppingDistance } from '../../src/mechanics/contouring/stopping-distance.ts';
import { expectClose } from '../close-to.ts';

const INCH = 25.4;
/** Decimal inches turned into mm and back: rounding alone. */
const EXACT = { percent: 1e-9 };
const WORKED = { percent: 0.01 };

describe('planning moves: length in which a feed is just reached, twice the stopping distance', () => {
  it.each([
    ['L-1', 1, 0.1],
    ['L-2', 0.5, 0.025],
  ])('%s: %f in/s at 10 in/s² take %f in (PRINTED)', (_id, feed, length) => {
    const stop = stoppingDistance(feed * 60 * INCH, (10 * INCH) / 1000);
    expectClose((2 * stop) / INCH, length, EXACT);
  });
});

describe('stopping distance (DERIVED)', () => {
  it('L-7: 100 mm/s at 1 m/s² stops in 5 mm and 0.1 s, and takes 10 mm to be reached and left', () => {
    const stop = stoppingDistance(6000, 1);
    expectClose(stop, 5, EXACT);
    expectClose(2 * stop, 10, EXACT);
    // on the way to a stop an axis is half as fast as before, on the average
    expectClose(stop / (100 / 2), 0.1, EXACT);
  });

  it('L-8: 5000 mm/min at 2 m/s² stops in 1.7361 mm, 10 000 at 3 in 4.6296 mm', () => {
    expectClose(stoppingDistance(5000, 2), 1.7361, WORKED);
    expectClose(stoppingDistance(10_000, 3), 4.6296, WORKED);
  });

  it('L-9: 50 blocks of 0.1 mm ahead are just enough for 6000 mm/min at 1 m/s²', () => {
    expectClose(stoppingDistance(6000, 1) / 0.1, 50, EXACT);
  });

  // the speed √(a·R) has no formula of its own here; at that speed the stop takes v²/(2a) = R/2
  it('L-11: on a radius of 5 mm 1 m/s² allows 4242.6 mm/min, from which a stop takes half the radius', () => {
    expectClose(stoppingDistance(4242.6, 1), 5 / 2, WORKED);
  });
});

describe('block rate (DERIVED)', () => {
  it.each([
    ['L-3', 5000, 0.1, 833.33],
    ['L-4', 10_000, 0.25, 666.67],
    ['L-4', 2000, 0.05, 666.67],
    ['L-4', 3000, 0.5, 100],
  ])('%s: %f mm/min in segments of %f mm are %f blocks/s', (_id, feed, segment, rate) => {
    expectClose(blocksPerSecond(feed, segment), rate, WORKED);
  });

  it('L-3: a block of 0.1 mm at 5000 mm/min lasts 1.2 ms', () => {
    expectClose(1000 / blocksPerSecond(5000, 0.1), 1.2, EXACT);
  });
});
