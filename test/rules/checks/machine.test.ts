import { describe, expect, test } from 'vitest';
import { gapsOf } from '../../../src/rules/judging/outcome.ts';
import { judgeExample } from '../example-shop.ts';
import { checkOf, easing, numbers, outcomeOf, said } from './said.ts';

const HOLDS_NOTHING = ['holds', null] as const;
const SINGLE = { class: 'single-axis' } as const;

describe('a table that is built in asks nothing of a machine table', () => {
  test.each([
    'slot-match',
    'table-footprint',
    'table-load',
    'table-clear',
    'axis-drives',
    'housing-clear',
  ] as const)('%s', (id) => {
    expect(said(id, { machine: { builtIn: {} } })).toEqual(HOLDS_NOTHING);
    expect(said(id, { rotary: { housing: null } })[1]).not.toBeNull();
  });
});

describe('the base on the table', () => {
  const over = (count: number, pitches: readonly number[] | 'unknown') =>
    ({
      rotary: {
        base: { along: 480, across: 260 },
        hold: { 'tilt-along-y': { keyWidth: 18, pitches } },
      },
      machine: { table: { size: [915, 460], slots: { count, pitch: 80 } } },
      mounting: 'tilt-along-y',
    }) as const;
  const at = (...of: Parameters<typeof over>) => said('table-footprint', over(...of))[0];

  test('it may stand over where its bolts find slots', () => {
    expect([at(2, [80]), at(1, [80]), at(2, [160]), at(3, [160])]).toEqual([
      'holds if',
      'fails',
      'fails',
      'holds if',
    ]);
    expect(at(2, [160, 80])).toBe('holds if');
    expect(at(5, 'unknown')).toBe('open');
    expect(easing('table-footprint', over(2, [80]))).toEqual(['bolts-on-table', null]);
  });

  test('half of the base has to bear', () => {
    const along = (length: number) =>
      said('table-footprint', {
        rotary: { base: { along: length, across: 260 } },
        machine: { table: { size: [2000, 460] } },
        mounting: 'tilt-along-y',
      })[0];
    expect([460, 461, 920, 921].map(along)).toEqual(['holds', 'holds if', 'holds if', 'fails']);
  });

  test('each way by itself, and each says which', () => {
    const rotary = { base: { along: 480, across: 260 } } as const;
    expect(said('table-footprint', { rotary, machine: { table: { size: [470, 900] } } })[1]).toBe(
      'base along X',
    );
    expect(said('table-footprint', { rotary, machine: { table: { size: [900, 250] } } })[1]).toBe(
      'base along Y',
    );
  });

  test('bolts of which nobody knows are the seller’s to say', () => {
    const found = outcomeOf('table-footprint', over(5, 'unknown'));
    expect(found).toMatchObject({ verdict: 'open', advisory: true });
    expect(gapsOf(found).map(({ path }) => path)).toEqual([
      'rotaries[example-rotary].hold.tilt-along-y.pitches',
    ]);
  });

  test('an overhang that the shop allows makes the table longer', () => {
    const given = { rotary: { base: { along: 480, across: 260 } }, mounting: 'tilt-along-y' } as const;
    const found = judgeExample(checkOf('table-footprint'), given, { tableOverhang: 20 });
    expect(found).toMatchObject({ verdict: 'holds', have: { low: 480, high: 480 } });
  });

  test('a hold that does not fit this mounting says nothing of bolts', () => {
    const hold = { 'tilt-along-y': undefined, 'tilt-along-x': { keyWidth: 18, pitches: [80] } };
    const rotary = { base: { along: 480, across: 260 }, hold } as const;
    expect(said('table-footprint', { rotary, mounting: 'tilt-along-y' })[0]).toBe('open');
  });
});

describe('what is heavy', () => {
  test('a plate under the base weighs what steel weighs', () => {
    const given = { part: { mass: 16, holding: { mass: 4 } }, rotary: { mass: 95 }, plates: 30 } as const;
    expect(numbers('table-load', given)).toEqual(['holds', 140.717, 680]);
  });

  test('one axis asks for one drive, and fitted ones count as offered ones do', () => {
    const drives = (fitted: number, offered: number) => ({ axisDrives: { fitted, offered } });
    const one = { rotary: SINGLE, mounting: 'axis-along-x' } as const;
    expect(numbers('axis-drives', { ...one, machine: drives(0, 1) })).toEqual(['holds', 1, 1]);
    expect(numbers('axis-drives', { machine: drives(1, 1) })).toEqual(['holds', 2, 2]);
    expect(numbers('axis-drives', { machine: drives(1, 0) })).toEqual(['fails', 2, 1]);
  });
});

describe('long work on one axis', () => {
  const bar = {
    shape: 'block',
    size: [90, 40, 30],
    approaches: ['around'],
    stands: 'upright',
    holding: { height: 20 },
  } as const;
  const level = { ...SINGLE, faceOffset: 220, base: { along: 200 }, tailstock: { length: 180 } } as const;

  test('two axes tilt it, and nothing is asked', () => {
    expect(said('tailstock', {})).toEqual(HOLDS_NOTHING);
  });

  test('its thinner side counts, and the fixture sticks out too', () => {
    const out = (size: readonly [number, number, number]) =>
      numbers('tailstock', {
        part: { ...bar, size },
        rotary: level,
        machine: { table: { size: [300, 300] } },
        mounting: 'axis-along-x',
      });
    expect(out([30, 40, 55])).toEqual(['holds', 75, 75]);
    expect(out([40, 30, 55])).toEqual(['holds', 75, 75]);
    expect(out([40, 30, 56])).toEqual(['fails', 76, 75]);
  });

  test('a tailstock stands in a row with it, along the axis', () => {
    // 220 + 20 + 280 + 180
    const long = { part: { ...bar, size: [30, 40, 280] }, rotary: level } as const;
    const on = (size: readonly [number, number], mounting: 'axis-along-x' | 'axis-along-y') =>
      said('tailstock', { ...long, machine: { table: { size } }, mounting })[0];
    expect(on([700, 100], 'axis-along-x')).toBe('holds if');
    expect(on([699, 900], 'axis-along-x')).toBe('fails');
    expect(on([100, 700], 'axis-along-y')).toBe('holds if');
    expect(on([900, 699], 'axis-along-y')).toBe('fails');
  });
});
