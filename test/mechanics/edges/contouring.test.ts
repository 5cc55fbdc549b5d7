import { describe, expect, it } from 'vitest';
import { arcSecondsToLength } from '../../../src/mechanics/contouring/arc-length.ts';
import { blocksPerSecond } from '../../../src/mechanics/contouring/blocks-per-second.ts';
import { centerError } from '../../../src/mechanics/contouring/center-error.ts';
import { approximateChordLength, chordLength } from '../../../src/mechanics/contouring/chord-length.ts';
import { rotarySpeedForContour } from '../../../src/mechanics/contouring/rotary-speed.ts';
import { stoppingDistance } from '../../../src/mechanics/contouring/stopping-distance.ts';
import { BELOW, WITHOUT_BOUND } from './bounds.ts';

describe('on the edge of what can be', () => {
  it.each([
    ['an arc on its axis', () => arcSecondsToLength(0, WITHOUT_BOUND), 0],
    ['an arc of no angle', () => arcSecondsToLength(WITHOUT_BOUND, 0), 0],
    ['a center that is exact', () => centerError(0, 90), 0],
    ['a turn that comes back, of any error', () => centerError(WITHOUT_BOUND, 720), 0],
    ['a chord through the center', () => chordLength(10, 10), 20],
    ['a chord as far in as the circle is wide', () => chordLength(10, 20), 0],
    ['a chord of a point', () => chordLength(0, 0), 0],
    ['a chord of no error', () => chordLength(WITHOUT_BOUND, 0), 0],
    ['an approximate chord of a point', () => approximateChordLength(0, WITHOUT_BOUND), 0],
    ['an approximate chord of no error', () => approximateChordLength(WITHOUT_BOUND, 0), 0],
    ['no feed', () => blocksPerSecond(0, 1), 0],
    ['a path in no steps at all', () => blocksPerSecond(1, 0), WITHOUT_BOUND],
    ['a rotary that stands', () => rotarySpeedForContour(0, 10), 0],
    ['a contour on the axis', () => rotarySpeedForContour(10, 0), WITHOUT_BOUND],
    ['what stands has stopped, even without a brake', () => stoppingDistance(0, 0), 0],
    ['what cannot brake never stops', () => stoppingDistance(60, 0), WITHOUT_BOUND],
  ])('%s', (_what, compute, value) => expect(compute()).toBe(value));
});

describe('one number beyond it', () => {
  it.each([
    ['the radius of an arc', () => arcSecondsToLength(BELOW, 10)],
    ['an error of the center', () => centerError(BELOW, 90)],
    ['the radius of a chord', () => chordLength(BELOW, 0)],
    ['the error of a chord', () => chordLength(1, BELOW)],
    ['a chord just outside its circle', () => chordLength(1, 2 - BELOW)],
    ['the radius of an approximate chord', () => approximateChordLength(BELOW, 0)],
    ['the error of an approximate chord', () => approximateChordLength(1, BELOW)],
    ['a feed in blocks', () => blocksPerSecond(BELOW, 1)],
    ['a step', () => blocksPerSecond(1, BELOW)],
    ['a feed around the axis', () => rotarySpeedForContour(BELOW, 1)],
    ['the radius of a contour', () => rotarySpeedForContour(1, BELOW)],
    ['a feed to stop from', () => stoppingDistance(BELOW, 1)],
    ['a braking', () => stoppingDistance(1, BELOW)],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});
