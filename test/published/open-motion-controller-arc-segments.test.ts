/**
 * An open-source motion controller: segments of an arc from its tolerance, and its documented default of 0.002 mm.
 * Formula PRINTED, values DERIVED.
 */
import { describe, expect, it } from 'vitest';
import { blocksPerSecond } from '../../src/mechanics/contouring/blocks-per-second.ts';
import { approximateChordLength, chordLength } from '../../src/mechanics/contouring/chord-length.ts';
import { rotarySpeedForContour } from '../../src/mechanics/contouring/rotary-speed.ts';
import { expectClose } from '../close-to.ts';

const WORKED = { percent: 0.01 };

describe('arc segments (L-5): radius 25 mm, tolerance 0.002 mm', () => {
  it('are 0.63244 mm long, by the approximation 0.63246 mm', () => {
    expectClose(chordLength(25, 0.002), 0.63244, { absolute: 0.00001 });
    expectClose(approximateChordLength(25, 0.002), 0.63246, {
      absolute: 0.00001,
    });
  });

  it('are 248 to the full circle by the controller’s own formula', () => {
    // its segment is half the arc over √(e·(2R − e)), which is half of ours
    expect(Math.floor((2 * Math.PI * 25) / chordLength(25, 0.002))).toBe(248);
  });

  it('come at 79.06 blocks/s at 3000 mm/min', () => {
    expectClose(blocksPerSecond(3000, chordLength(25, 0.002)), 79.06, WORKED);
  });
});

describe('rotary speed for a contour (L-12, DERIVED from the length of a circle)', () => {
  it('15 708 mm/min at 100 mm need 25 rev/min', () => {
    expectClose(rotarySpeedForContour(15_708, 100), 25, WORKED);
  });

  it('half the radius needs twice the speed', () => {
    expectClose(rotarySpeedForContour(15_708, 50), 50, WORKED);
  });
});
