import { describe, expect, test } from 'vitest';
import type { CheckId } from '../../../src/rules/checks/ids.ts';
import { easing, numbers, outcomeOf, said } from './said.ts';

const LEVEL = { class: 'single-axis' } as const;
const ALONG_X = { rotary: LEVEL, mounting: 'axis-along-x' } as const;
const BAR = { shape: 'round', diameter: 25, length: 60, approaches: ['around'] } as const;
const IN_COLLET = { ...BAR, holding: { by: 'collet' } } as const;
const INDEXER = { class: 'collet-indexer', collet: 26 } as const;
const HOLDS_NOTHING = ['holds', null] as const;

describe('what a rotary cannot do is not asked of it', () => {
  test.each(['tilt-moment', 'tilt-swing', 'brake-tilt'] as const)(
    '%s asks nothing of a single axis',
    (id) => {
      expect(said(id, ALONG_X)).toEqual(HOLDS_NOTHING);
      expect(said(id, {})[1]).not.toBeNull();
    },
  );

  test.each(['drive-rotary', 'drive-tilt', 'rotary-speed'] as const)(
    '%s asks nothing where no axis moves in the cut',
    (id) => {
      expect(said(id, {})).toEqual(HOLDS_NOTHING);
      expect(said(id, { part: { motion: 'surfaces' } })).toEqual(HOLDS_NOTHING);
      expect(said(id, { part: { motion: 'simultaneous' } })[1]).not.toBeNull();
    },
  );

  test('a single axis that moves in the cut has no tilt to drive', () => {
    expect(said('drive-tilt', { ...ALONG_X, part: { motion: 'simultaneous' } })).toEqual(HOLDS_NOTHING);
  });
});

describe('collets and faceplates', () => {
  test('a bar in a collet asks for the collet, not for the faceplate', () => {
    const given = { part: IN_COLLET, rotary: INDEXER, mounting: 'axis-along-x' } as const;
    expect(said('collet', given)).toEqual(['holds', 'bar diameter']);
    expect(said('faceplate', given)).toEqual(HOLDS_NOTHING);
  });

  test('a bar in a fixture asks for no collet', () => {
    const given = { part: BAR, rotary: INDEXER, mounting: 'axis-along-x' } as const;
    expect(said('collet', given)).toEqual(HOLDS_NOTHING);
    expect(said('faceplate', given)).toEqual(['holds', 'plan diameter']);
  });

  test('on another rotary a collet is held in a fixture', () => {
    expect(said('collet', { ...ALONG_X, part: IN_COLLET })).toEqual(HOLDS_NOTHING);
  });

  test('an indexer without a collet takes no bar', () => {
    const given = {
      part: IN_COLLET,
      rotary: { ...INDEXER, collet: null },
      mounting: 'axis-along-x',
    } as const;
    expect(said('collet', given)).toEqual(['fails', 'a rotary that takes no collet']);
    expect(numbers('collet', given)).toEqual(['fails', 25, 0]);
  });

  test('a rotary without a faceplate carries no part on one', () => {
    const given = { part: { size: [60, 80, 40] }, rotary: { faceplate: null } } as const;
    expect(said('faceplate', given)).toEqual(['fails', 'a rotary without a faceplate takes bars only']);
    expect(numbers('faceplate', given)).toEqual(['fails', 100, 0]);
    expect(easing('faceplate', given)).toEqual([null, null]);
  });

  test('a part as wide as the swing is carried by a rigid fixture, a wider one is not', () => {
    const wide = (swing: number) =>
      ({ part: { size: [60, 80, 40] }, rotary: { faceplate: 90, swing } }) as const;
    expect(easing('faceplate', wide(100))).toEqual(['rigid-fixture', null]);
    expect(said('faceplate', wide(100))[0]).toBe('holds if');
    expect(said('faceplate', wide(99))[0]).toBe('fails');
  });
});

describe('which sides one axis reaches', () => {
  const reached = (approaches: readonly unknown[]) =>
    said('tilt-range', { ...ALONG_X, part: { approaches } as never });

  test.each([[['around']], [['sides']], [['around', 'sides']]] as const)('%s around it', (approaches) => {
    expect(reached(approaches)).toEqual(['holds', 'sides around one level axis']);
  });

  test.each([[['top']], [['around', 'top']], [['sides', { slant: 30 }]]] as const)('not %j', (approaches) => {
    expect(reached(approaches)).toEqual(['fails', 'a side that one level axis never turns to the tool']);
  });

  test('around it means a quarter turn at most', () => {
    expect(numbers('tilt-range', { ...ALONG_X, part: { approaches: ['around'] } })).toEqual([
      'holds',
      90,
      90,
    ]);
    expect(outcomeOf('tilt-range', { ...ALONG_X, part: { approaches: ['top'] } }).comparison?.unit).toBe(
      'axes',
    );
  });

  test('a single axis has no tilt to be asked for', () => {
    const rotary = { ...LEVEL, tilt: null } as const;
    expect(said('tilt-range', { ...ALONG_X, rotary, part: { approaches: ['around'] } })).toEqual([
      'holds',
      'sides around one level axis',
    ]);
  });

  test('two axes are asked for their tilt', () => {
    expect(said('tilt-range', { part: { approaches: ['around'] } })).toEqual([
      'holds',
      'greatest polar angle',
    ]);
    expect(said('tilt-range', { part: { approaches: ['top'] } })).toEqual(['holds', 'greatest polar angle']);
  });
});

describe('what an axis carries', () => {
  const heavy = { mass: 26, holding: { mass: 4 } } as const;
  const payload = { level: 35, tilted: 20 } as const;

  test('a level axis always carries the tilted payload', () => {
    const top = { ...heavy, approaches: ['top'] } as const;
    expect(numbers('payload', { part: top, rotary: { ...LEVEL, payload } })).toEqual(['fails', 30, 20]);
    expect(
      numbers('payload', { part: { ...heavy, approaches: ['around'] }, rotary: { ...LEVEL, payload } }),
    ).toEqual(['fails', 30, 20]);
  });

  test('a table beside a vertical tool carries as it tilts', () => {
    const builtIn = { payload };
    const top = { ...heavy, approaches: ['top'] } as const;
    expect(numbers('payload', { part: top, machine: { builtIn } })).toEqual(['holds', 30, 35]);
    expect(numbers('payload', { part: heavy, machine: { builtIn } })).toEqual(['fails', 30, 20]);
  });

  test('just over 30° it is the tilted payload', () => {
    const slanted = (slant: number) =>
      numbers('payload', { part: { ...heavy, approaches: ['top', { slant }] }, rotary: { payload } });
    expect(slanted(30)).toEqual(['holds', 30, 35]);
    expect(slanted(30.1)).toEqual(['fails', 30, 20]);
  });

  test('inertia that nobody publishes is the seller’s to say, one that is known and not enough is not', () => {
    expect(outcomeOf('inertia', { rotary: { inertia: 'unknown' } }).advisory).toBe(true);
    const unknownPart = { part: { mass: [1, 900] }, rotary: { inertia: 0.5 } } as const;
    expect(outcomeOf('inertia', unknownPart)).toMatchObject({ verdict: 'open', advisory: false });
  });

  test('a round part turns as a cylinder, a block as a block, the fixture as a disc', () => {
    const fixture = { diameter: 100, height: 40, mass: 4 };
    const round = {
      shape: 'round',
      diameter: 80,
      length: 50,
      mass: 10,
      eccentricity: 0,
      holding: fixture,
    } as const;
    // 10·0.04²/2 + 4·0.05²/2
    expect(numbers('inertia', { part: round, rotary: { inertia: 1 } })).toEqual(['holds', 0.013, 1]);
    const block = { size: [90, 60, 55], mass: 10, eccentricity: 100, holding: fixture } as const;
    // 10·(0.09² + 0.06²)/12 + 10·0.1² + 0.005
    expect(numbers('inertia', { part: block, rotary: { inertia: 1 } })).toEqual(['holds', 0.115, 1]);
  });
});

describe('error between faces', () => {
  const exact = { accuracy: { rotary: 0, tilt: 0 } } as const;
  const machine = (spindleProbe: 'standard' | number | undefined) =>
    ({ positioning: 0, features: { spindleProbe } }) as const;
  const need = (given: Parameters<typeof outcomeOf>[1], id: CheckId = 'index-accuracy') => {
    const { low, high } = outcomeOf(id, given).need;
    expect(low).toBe(high);
    return low;
  };

  test('a probe that comes with the machine finds the centers', () => {
    const given = { part: { tolerance: 0.1 }, rotary: exact, machine: machine('standard') } as const;
    expect(said('index-accuracy', given)).toEqual(['holds', 'error between faces, centers probed']);
    // about half a turn twice the error, about a quarter √2 times it
    expect(need(given)).toBeCloseTo(0.008 * Math.sqrt(4 + 2), 12);
  });

  test('one that can be had is ordered where it helps, and says what is left', () => {
    const given = { part: { tolerance: 0.05 }, rotary: exact, machine: machine(6800) } as const;
    expect(said('index-accuracy', given)).toEqual(['holds if', 'error between faces, centers found by hand']);
    expect(easing('index-accuracy', given)).toEqual(['spindle-probe', 0.02]);
    const tight = { ...given, part: { tolerance: 0.039 } } as const;
    expect(said('index-accuracy', tight)[0]).toBe('fails');
  });

  test('about one axis nothing of the tilt counts', () => {
    const given = {
      part: { size: [60, 80, 40], approaches: ['around'], tolerance: 0.1 },
      rotary: { ...LEVEL, accuracy: { rotary: 30, tilt: 900 } },
      machine: { ...machine(undefined), positioning: 0.01 },
      mounting: 'axis-along-x',
    } as const;
    const atRadius = (50 * 30 * Math.PI) / 648_000;
    expect(need(given)).toBeCloseTo(Math.hypot(atRadius, 2 * 0.02, 0.01), 12);
  });

  test('about both axes both count, each at its own radius', () => {
    const given = {
      part: {
        size: [60, 80, 40],
        approaches: ['top', { slant: 60 }],
        tolerance: 0.1,
        holding: { diameter: 60, height: 10 },
      },
      rotary: { faceplate: 60, faceOffset: 50, accuracy: { rotary: 30, tilt: 20 } },
      machine: { ...machine(undefined), positioning: 0.01 },
    } as const;
    const rotary = (50 * 30 * Math.PI) / 648_000;
    const tilt = (Math.hypot(50, 100) * 20 * Math.PI) / 648_000;
    expect(need(given)).toBeCloseTo(Math.hypot(rotary, tilt, 2 * 0.02, 0.02, 0.01), 12);
  });
});

describe('what turns freely', () => {
  const part = { size: [60, 80, 40], approaches: ['around'], holding: { diameter: 90 } } as const;

  test('on a level axis plates give room, by twice their thickness', () => {
    const rotary = { ...LEVEL, swing: 200, centerHeight: 54 } as const;
    expect(numbers('swing', { part, rotary, mounting: 'axis-along-x' })).toEqual(['fails', 100, 98]);
    expect(numbers('swing', { part, rotary, mounting: 'axis-along-x', plates: 10 })).toEqual([
      'holds',
      100,
      118,
    ]);
  });

  test('a table that tilts stands free of the machine table', () => {
    expect(numbers('swing', { part, rotary: { swing: 200, centerHeight: 54 } })).toEqual(['holds', 100, 200]);
  });

  test('a fixture wider than the part turns too', () => {
    const wide = { ...part, holding: { diameter: 130 } };
    expect(numbers('swing', { part: wide, rotary: { swing: 120 } })).toEqual(['fails', 130, 120]);
  });
});
