import { describe, expect, test } from 'vitest';
import { easing, numbers, outcomeOf, said } from './said.ts';

const MOVING = { motion: 'simultaneous' } as const;
const OFF = { eccentricity: 20, motion: 'positional' } as const;
const HOLDS_NOTHING = ['holds', null] as const;
const SINGLE = { rotary: { class: 'single-axis' }, mounting: 'axis-along-x' } as const;

describe('features of the control', () => {
  test('a moving axis asks for tool center point control, an indexed one does not', () => {
    const machine = { features: { toolCenterPoint: undefined } } as const;
    expect(numbers('tool-center-point', { part: MOVING, machine })).toEqual(['fails', 1, 0]);
    expect(said('tool-center-point', { part: OFF, machine })).toEqual(HOLDS_NOTHING);
    expect(said('tool-center-point', { part: { motion: 'surfaces' }, machine })).toEqual(HOLDS_NOTHING);
  });

  test('what comes with the machine is there, what can be ordered is ordered', () => {
    const at = (toolCenterPoint: 'standard' | number) => ({
      part: MOVING,
      machine: { features: { toolCenterPoint } },
    });
    expect(said('tool-center-point', at('standard'))[0]).toBe('holds');
    expect(easing('tool-center-point', at(9500))).toEqual(['tool-center-point', null]);
    expect(said('tool-center-point', at(9500))[0]).toBe('holds if');
  });

  test.each([
    ['rotating-work-offset', 'rotatingWorkOffset'],
    ['tilted-work-plane', 'tiltedWorkPlane'],
  ] as const)('%s is for parts that are indexed', (id, feature) => {
    const machine = { features: { [feature]: undefined } } as never;
    expect(said(id, { part: OFF, machine })[0]).toBe('fails');
    expect(said(id, { part: { ...OFF, motion: 'surfaces' }, machine })[0]).toBe('fails');
    expect(said(id, { part: { ...OFF, ...MOVING }, machine })).toEqual(HOLDS_NOTHING);
    expect(easing(id, { part: OFF, machine: { features: { [feature]: 3000 } } as never })).toEqual([
      id,
      null,
    ]);
  });

  test('nothing tilts on a single axis, but its zero turns', () => {
    const given = { ...SINGLE, part: { ...OFF, approaches: ['around'] } } as const;
    const machine = { features: { tiltedWorkPlane: undefined, rotatingWorkOffset: undefined } } as const;
    expect(said('tilted-work-plane', { ...given, machine })).toEqual(HOLDS_NOTHING);
    expect(said('rotating-work-offset', { ...given, machine })[0]).toBe('fails');
  });
});

describe('how fast the control reads', () => {
  const contour = { feed: 2400, radius: 25, chordError: 0.002 } as const;
  const blocks = (standard: number, ahead: number, lookAhead = 5000, aheadWithLookAhead = 5000) =>
    ({
      acceleration: 2,
      features: { lookAhead: 3900 },
      blocks: { standard, ahead, lookAhead, aheadWithLookAhead },
    }) as const;

  test('nothing is read fast for what is indexed', () => {
    expect(said('look-ahead', { part: { motion: 'positional', contour }, machine: blocks(1, 1) })).toEqual(
      HOLDS_NOTHING,
    );
  });

  test('surfaces are read in chords, moving axes in steps of 0.2 mm at most', () => {
    const surfaces = outcomeOf('look-ahead', {
      part: { motion: 'surfaces', contour },
      machine: blocks(1, 9000),
    });
    expect(surfaces.need.low).toBeCloseTo(40 / Math.sqrt(0.4), 9);
    const moving = outcomeOf('look-ahead', { part: { ...MOVING, contour }, machine: blocks(1, 9000) });
    expect(moving.need.low).toBeCloseTo(200, 9);
    const fine = { ...contour, chordError: 0.00002 };
    const finer = outcomeOf('look-ahead', { part: { ...MOVING, contour: fine }, machine: blocks(1, 9000) });
    expect(finer.need.low).toBeCloseTo(40 / Math.sqrt(0.004), 9);
  });

  test('as many blocks have to be read ahead as it takes to stop', () => {
    const found = outcomeOf('look-ahead', { part: { ...MOVING, contour }, machine: blocks(9000, 1) });
    expect(found.comparison).toMatchObject({ what: 'blocks read ahead', unit: 'blocks' });
    // 40² / (2 · 2000) = 0.4 mm in steps of 0.2 mm
    expect(found.need.low).toBeCloseTo(2, 9);
    expect(found.verdict).toBe('holds if');
  });

  test('look-ahead helps where it reads fast and far enough', () => {
    const at = (lookAhead: number, ahead: number) =>
      said('look-ahead', { part: { ...MOVING, contour }, machine: blocks(100, 1, lookAhead, ahead) })[0];
    expect(at(200, 2)).toBe('holds if');
    expect(at(199, 2)).toBe('fails');
    expect(at(200, 1)).toBe('fails');
  });

  test('the slower of two needs says which', () => {
    const found = outcomeOf('look-ahead', { part: { ...MOVING, contour }, machine: blocks(100, 9000) });
    expect(found.comparison).toMatchObject({ what: 'blocks a second', unit: 'blocks/s' });
  });
});
