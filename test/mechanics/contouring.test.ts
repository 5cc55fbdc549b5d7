import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcSecondsToLength } from '../../src/mechanics/contouring/arc-length.ts';
import { blocksPerSecond } from '../../src/mechanics/contouring/blocks-per-second.ts';
import { centerError } from '../../src/mechanics/contouring/center-error.ts';
import { approximateChordLength, chordLength } from '../../src/mechanics/contouring/chord-length.ts';
import { errorBudget } from '../../src/mechanics/contouring/error-budget.ts';
import { rotarySpeedForContour } from '../../src/mechanics/contouring/rotary-speed.ts';
import { stoppingDistance } from '../../src/mechanics/contouring/stopping-distance.ts';
import { expectClose } from '../close-to.ts';

const runs = { seed: 13, numRuns: 300 };
const size = fc.double({ min: 0.01, max: 500, noNaN: true });
const ROUNDING = { percent: 1e-8 };
const { POSITIVE_INFINITY } = Number;

describe('solved back', () => {
  it('the chord gives its distance from the arc again', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 0.001, max: 1, noNaN: true }), (radius, share) => {
        const half = chordLength(radius, share * radius) / 2;
        expectClose(radius - Math.sqrt(radius ** 2 - half ** 2), share * radius, { percent: 0.001 });
      }),
      runs,
    );
  });

  it('the approximate chord is long by a quarter of error over radius', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1e-6, max: 0.01, noNaN: true }), (radius, share) => {
        const ratio = approximateChordLength(radius, share * radius) / chordLength(radius, share * radius);
        expect(ratio).toBeGreaterThanOrEqual(1);
        // the next term is 3/32 of the share squared
        expectClose(ratio - 1, share / 4, { absolute: share ** 2 / 10 + 1e-12 });
      }),
      runs,
    );
  });

  it('the rotary speed gives the feed again', () => {
    fc.assert(
      fc.property(size, size, (feed, radius) => {
        expectClose(rotarySpeedForContour(feed, radius) * 2 * Math.PI * radius, feed, ROUNDING);
      }),
      runs,
    );
  });

  it('the stopping distance gives the feed again', () => {
    fc.assert(
      fc.property(size, size, (feed, acceleration) => {
        const speed = Math.sqrt(2 * acceleration * 1000 * stoppingDistance(feed, acceleration));
        expectClose(speed * 60, feed, ROUNDING);
      }),
      runs,
    );
  });

  it('a wrong center puts the work out by the distance of the two places of a turned point', () => {
    fc.assert(
      fc.property(size, fc.double({ min: -360, max: 360, noNaN: true }), (error, turn) => {
        const angle = (turn * Math.PI) / 180;
        const apart = Math.hypot(error * (1 - Math.cos(angle)), error * Math.sin(angle));
        expectClose(centerError(error, turn), apart, { absolute: 1e-9 });
      }),
      runs,
    );
  });
});

describe('at the limits', () => {
  it('no error, no turn and no feed come to nothing', () => {
    expect(arcSecondsToLength(POSITIVE_INFINITY, 0)).toBe(0);
    expect(centerError(POSITIVE_INFINITY, 0)).toBe(0);
    expect(centerError(0.02, 360)).toBe(0);
    expect(errorBudget([])).toBe(0);
    expect(stoppingDistance(0, 0)).toBe(0);
    expect(chordLength(POSITIVE_INFINITY, 0)).toBe(0);
    expect(approximateChordLength(POSITIVE_INFINITY, 0)).toBe(0);
  });

  it('what is without bound stays so', () => {
    expect(errorBudget([0.01, POSITIVE_INFINITY])).toBe(POSITIVE_INFINITY);
    expect(blocksPerSecond(5000, 0)).toBe(POSITIVE_INFINITY);
    expect(rotarySpeedForContour(1000, 0)).toBe(POSITIVE_INFINITY);
    expect(chordLength(POSITIVE_INFINITY, 0.01)).toBe(POSITIVE_INFINITY);
  });

  it('an angle keeps its sign', () => {
    expect(arcSecondsToLength(100, -10)).toBe(-arcSecondsToLength(100, 10));
  });
});

describe('out of range', () => {
  it.each([
    ['a negative radius of an arc', () => arcSecondsToLength(-1, 10)],
    ['an error with a sign', () => centerError(-0.01, 90)],
    ['a chord outside its circle', () => chordLength(10, 21)],
    ['a negative chord error', () => approximateChordLength(10, -0.1)],
    ['a negative contour', () => rotarySpeedForContour(100, -1)],
    ['a negative segment', () => blocksPerSecond(100, -1)],
    ['a negative acceleration', () => stoppingDistance(100, -1)],
  ])('%s is refused', (_what, call) => {
    expect(call).toThrow(RangeError);
  });
});
