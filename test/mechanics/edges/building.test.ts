import { describe, expect, it } from 'vitest';
import { boltsMeetSlots } from '../../../src/mechanics/building/bolts-meet-slots.ts';
import { fitsEitherWay } from '../../../src/mechanics/building/fits-either-way.ts';
import { floorPressure } from '../../../src/mechanics/building/floor-pressure.ts';
import { slotPitchTolerance } from '../../../src/mechanics/building/slot-pitch-tolerance.ts';
import { supplyCurrent } from '../../../src/mechanics/building/supply-current.ts';
import { T_SLOTS, tSlotOfWidth } from '../../../src/mechanics/building/t-slots.ts';
import { BELOW, NONE } from './bounds.ts';

describe('on the edge of what can be', () => {
  it.each([
    ['bolts that have to meet exactly', () => boltsMeetSlots(160, 80, 0), true],
    ['bolts that have to meet exactly and do not', () => boltsMeetSlots(160.01, 80, 0), false],
    ['bolts one slot apart', () => boltsMeetSlots(80, 80, 0), true],
    ['bolts just within the tolerance on the narrow side', () => boltsMeetSlots(79.5, 80, 0.5), true],
    ['bolts just outside of it', () => boltsMeetSlots(79.4, 80, 0.5), false],
    ['a thing without sides', () => fitsEitherWay([0, 0], [0, 0]), true],
    ['a thing with its long side too long', () => fitsEitherWay([10, 5], [9, 9]), false],
    ['a thing with its short side too long', () => fitsEitherWay([10, 6], [5, 20]), false],
    ['a thing as large as the place, turned', () => fitsEitherWay([5, 10], [10, 5]), true],
    ['nothing on the floor', () => floorPressure(0, 5), 0],
    ['no load on the supply', () => supplyCurrent(0, 400, 3), 0],
  ] as const)('%s', (_what, compute, value) => expect(compute()).toBe(value));

  it('the tolerance of a pitch belongs to the narrower group where two meet', () => {
    const at = [20, 25, 25.1, 100, 100.1, 250, 250.1, 500].map(slotPitchTolerance);
    expect(at).toEqual([0.2, 0.2, 0.3, 0.3, 0.5, 0.5, 0.8, 0.8]);
  });

  it('a slot of another width is none', () => {
    expect(tSlotOfWidth(13)).toBeUndefined();
  });

  it('a size has pitches to be avoided only where the standard lists some', () => {
    const avoided = T_SLOTS.filter((size) => size.avoided.length > 0);
    expect(avoided.map(({ width, avoided: pitches }) => [width, ...pitches])).toEqual([
      [12, 40],
      [14, 50],
      [18, 63],
      [22, 80],
    ]);
  });
});

describe('one number beyond it', () => {
  it.each([
    ['bolts', () => boltsMeetSlots(BELOW, 80, 0.5)],
    ['slots', () => boltsMeetSlots(80, BELOW, 0.5)],
    ['a tolerance', () => boltsMeetSlots(80, 80, BELOW)],
    ['the first side of a thing', () => fitsEitherWay([BELOW, 1], [1, 1])],
    ['the second side of a place', () => fitsEitherWay([1, 1], [1, BELOW])],
    ['a mass', () => floorPressure(BELOW, 1)],
    ['a mass that is none', () => floorPressure(NONE, 1)],
    ['an area', () => floorPressure(1, BELOW)],
    ['an area that is none', () => floorPressure(1, NONE)],
    ['a load', () => supplyCurrent(BELOW, 400, 3)],
    ['a voltage', () => supplyCurrent(1, BELOW, 3)],
    ['no phase', () => supplyCurrent(1, 400, 0)],
    ['a pitch below the series', () => slotPitchTolerance(20 + BELOW)],
    ['a pitch above it', () => slotPitchTolerance(500 - BELOW)],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});
