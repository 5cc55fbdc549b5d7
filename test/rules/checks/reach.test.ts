import { describe, expect, test } from 'vitest';
import type { ExampleGiven } from '../../../src/rules/checks/example.ts';
import { easing, numbers, said } from './said.ts';

describe('work that turns under a low nose', () => {
  // √(54.08² + 140²) = 150.08 mm up, and as far out
  const low = (travel: readonly [number, number, number], more: object = {}): ExampleGiven => ({
    part: { size: [90, 60, 60], holding: { diameter: 100, height: 40 } },
    machine: { noseToTable: [100, 450], noseDiameter: 90, travel },
    rotary: { centerHeight: 150 },
    tools: { longest: 180 },
    ...more,
  });

  test('wants room for itself, half the nose and the approach', () => {
    expect(numbers('index-clear', low([760, 510, 350]))).toEqual(['holds if', 355.083, 300]);
    expect(easing('index-clear', low([760, 510, 350]))).toEqual(['move-aside', 220.083]);
  });

  test('moves aside along X or along Y, to whichever side is farther', () => {
    const at = (...of: Parameters<typeof low>) => said('index-clear', low(...of))[0];
    expect(at([440, 300, 350])).toBe('fails');
    expect(at([441, 300, 350])).toBe('holds if');
    expect(at([300, 440, 350])).toBe('fails');
    expect(at([300, 441, 350])).toBe('holds if');
    for (const place of [{ x: 20 }, { x: -20 }]) expect(at([410, 300, 350], { place })).toBe('holds if');
    for (const place of [{ y: 20 }, { y: -20 }]) expect(at([300, 410, 350], { place })).toBe('holds if');
    expect(at([410, 300, 350], { place: { y: 20 } })).toBe('fails');
  });

  test('on one axis it turns about that', () => {
    const part = { size: [90, 60, 60], approaches: ['around'], holding: { diameter: 40, height: 40 } };
    const given = low([760, 510, 350], {
      part,
      rotary: { class: 'single-axis', centerHeight: 150, faceplate: 80 },
    });
    // √(45² + 30²) + 25 + 180, or half the faceplate where that is more
    expect(numbers('index-clear', given)).toEqual(['holds', 259.083, 300]);
    const wide = { ...given, rotary: { ...given.rotary, faceplate: 125 } };
    expect(numbers('index-clear', wide)).toEqual(['holds', 267.5, 300]);
  });
});

describe('the nose at the bottom of Z', () => {
  const down = (bottom: number): ExampleGiven => ({
    part: { size: [90, 60, 60], depthSide: 20, depthTop: 0 },
    rotary: { faceOffset: 10, centerHeight: 150 },
    machine: { noseToTable: [bottom, 610] },
    tools: { shortest: 90, longest: 180 },
  });

  test('a longer tool reaches from a higher nose, as long as it has to be', () => {
    expect(easing('reach-low', down(270))).toEqual(['longer-tool-there', 110]);
    expect(said('reach-low', down(250))[0]).toBe('holds');
    expect(said('reach-low', down(251))[0]).toBe('holds if');
    expect(said('reach-low', down(340))[0]).toBe('holds if');
    expect(said('reach-low', down(341))[0]).toBe('fails');
  });
});

describe('the table under what tilts', () => {
  const tilting: ExampleGiven = {
    part: { size: [60, 80, 20], holding: { diameter: 60, height: 10 } },
    rotary: { faceplate: 60, faceOffset: 10, centerHeight: 55 },
  };

  test('plates under the rotary lift the work off it', () => {
    expect(numbers('table-clear', { ...tilting, plates: 4 })).toEqual(['fails', -50, -49]);
    expect(numbers('table-clear', { ...tilting, plates: 5 })).toEqual(['holds', -50, -50]);
  });

  test('a level axis is left to the check of the swing', () => {
    const rotary = { ...tilting.rotary, class: 'single-axis' } as const;
    expect(said('table-clear', { ...tilting, rotary, mounting: 'axis-along-x' })).toEqual(['holds', null]);
  });
});
