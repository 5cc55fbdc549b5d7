/**
 * ISO 299:1987, Machine tool tables: T-slots and corresponding bolts (title and scope PRINTED); sizes from
 * "T-Slot Profile Design per BS 2485", engineersedge.com (PRINTED; BS 2485 has the same sizes). The page
 * misprints the second pitch of M5 as 62 for 32.
 */
import { describe, expect, it } from 'vitest';
import { boltsMeetSlots } from '../../src/mechanics/building/bolts-meet-slots.ts';
import { slotPitchTolerance } from '../../src/mechanics/building/slot-pitch-tolerance.ts';
import { T_SLOTS, tSlotOfWidth } from '../../src/mechanics/building/t-slots.ts';

describe('T-slots, table of sizes', () => {
  it.each([
    ['M4', 5, [20, 25, 32], []],
    ['M5', 6, [25, 32, 40], []],
    ['M6', 8, [32, 40, 50], []],
    ['M8', 10, [40, 50, 63], []],
    ['M10', 12, [50, 63, 80], [40]],
    ['M12', 14, [63, 80, 100], [50]],
    ['M16', 18, [80, 100, 125], [63]],
    ['M20', 22, [100, 125, 160], [80]],
    ['M24', 28, [100, 125, 160, 200], []],
    ['M30', 36, [125, 160, 200, 250], []],
    ['M36', 42, [160, 200, 250, 320], []],
    ['M42', 48, [200, 250, 320, 400], []],
    ['M48', 54, [250, 320, 400, 500], []],
  ])('%s goes with a slot of %i mm', (bolt, width, pitches, avoided) => {
    expect(tSlotOfWidth(width)).toEqual({ width, bolt, pitches, avoided });
  });

  it('no other size is listed', () => {
    expect(T_SLOTS).toHaveLength(13);
    expect(tSlotOfWidth(16)).toBeUndefined();
  });

  it('pitches are off by ±0.2, ±0.3, ±0.5 or ±0.8 mm', () => {
    expect([20, 25].map(slotPitchTolerance)).toEqual([0.2, 0.2]);
    expect([32, 40, 50, 63, 80, 100].map(slotPitchTolerance)).toEqual([0.3, 0.3, 0.3, 0.3, 0.3, 0.3]);
    expect([125, 160, 200, 250].map(slotPitchTolerance)).toEqual([0.5, 0.5, 0.5, 0.5]);
    expect([320, 400, 500].map(slotPitchTolerance)).toEqual([0.8, 0.8, 0.8]);
  });
});

describe('T-slots, what follows from the pitches (DERIVED)', () => {
  const play = 1;

  it('bolts 63 or 100 mm apart do not meet slots 80 mm apart', () => {
    expect(boltsMeetSlots(63, 80, play)).toBe(false);
    expect(boltsMeetSlots(100, 80, play)).toBe(false);
  });

  it('bolts 80 or 160 mm apart do', () => {
    expect(boltsMeetSlots(80, 80, play)).toBe(true);
    expect(boltsMeetSlots(160, 80, play)).toBe(true);
  });

  it('slots 100 and 125 mm apart both take bolts 500 mm apart, and nothing closer', () => {
    const both = [125, 200, 250, 300, 375, 400, 500].filter(
      (pitch) => boltsMeetSlots(pitch, 100, play) && boltsMeetSlots(pitch, 125, play),
    );
    expect(both).toEqual([500]);
  });
});
