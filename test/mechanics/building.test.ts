import { describe, expect, it } from 'vitest';
import { boltsMeetSlots } from '../../src/mechanics/building/bolts-meet-slots.ts';
import { slotPitchTolerance } from '../../src/mechanics/building/slot-pitch-tolerance.ts';

describe('bolts over slots', () => {
  it('meet within the tolerance and not beyond it', () => {
    expect(boltsMeetSlots(160.5, 80, 0.5)).toBe(true);
    expect(boltsMeetSlots(160.6, 80, 0.5)).toBe(false);
  });

  it('cannot both stand in one slot', () => {
    expect(boltsMeetSlots(0.4, 80, 0.5)).toBe(false);
    expect(boltsMeetSlots(30, 80, 0.5)).toBe(false);
  });

  it('of pitches that are not known do not meet', () => {
    expect(boltsMeetSlots(Number.NaN, 80, 0.5)).toBe(false);
    expect(boltsMeetSlots(160, Number.NaN, 0.5)).toBe(false);
  });

  it('of no pitch are refused', () => {
    expect(() => boltsMeetSlots(0, 80, 0.5)).toThrow(RangeError);
    expect(() => boltsMeetSlots(80, 0, 0.5)).toThrow(RangeError);
    expect(() => boltsMeetSlots(80, 80, -0.1)).toThrow(RangeError);
  });
});

describe('tolerance of a pitch', () => {
  it('is not defined outside the series', () => {
    expect(() => slotPitchTolerance(19)).toThrow(RangeError);
    expect(() => slotPitchTolerance(501)).toThrow(RangeError);
    expect(() => slotPitchTolerance(Number.NaN)).toThrow(RangeError);
  });
});
