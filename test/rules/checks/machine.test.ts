import { describe, expect, test } from 'vitest';
import { judgeExample } from '../example-shop.ts';
import { checkOf, easing, numbers, said } from './said.ts';

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

describe('bolts and keys over the slots', () => {
  const over = (
    bolts: readonly number[] | 'unknown',
    slots: { readonly count?: unknown; readonly pitch?: unknown; readonly width?: unknown },
    more: object = {},
  ) =>
    ({
      rotary: { hold: { 'tilt-along-x': { keyWidth: 18, pitches: bolts } } },
      machine: { table: { slots: { count: 5, width: 18, pitch: 80, ...slots } } },
      ...more,
    }) as never;

  test('as many spaces as there are slots, less one', () => {
    expect(numbers('slot-match', over([160], { count: 2 }))).toEqual(['fails', 80, 0.5]);
    expect(said('slot-match', over([160], { count: 3 }))[0]).toBe('holds');
    expect(said('slot-match', over([80], { count: 2 }))[0]).toBe('holds');
    expect(numbers('slot-match', over([80], { count: 1 }))).toEqual(['fails', Number.POSITIVE_INFINITY, 0.5]);
  });

  test('one pair of bolt holes that fits is enough', () => {
    expect(said('slot-match', over([63, 100, 240], {}))[0]).toBe('holds');
    expect(numbers('slot-match', over([63, 90], {}))).toEqual(['fails', 10, 0.5]);
  });

  test('half a millimeter does, more does not, to either side', () => {
    const at = (bolts: number) => said('slot-match', over([bolts], {}))[0];
    expect([159.4, 159.5, 160.5, 160.6].map(at)).toEqual(['fails', 'holds', 'holds', 'fails']);
    const key = (width: number) => said('slot-match', over([80], { width }));
    expect([17.4, 17.5, 18.5, 18.6].map((width) => key(width)[0])).toEqual([
      'fails',
      'holds',
      'holds',
      'fails',
    ]);
    expect(key(14)[1]).toBe('keys in the slots');
    expect(said('slot-match', over([90], {}))[1]).toBe('bolts over the slots');
  });

  test('what nobody says may fit', () => {
    expect(said('slot-match', over('unknown', {}))[0]).toBe('open');
    expect(said('slot-match', over([160], { count: 'unknown' }))[0]).toBe('open');
    expect(said('slot-match', over([160], { pitch: 'unknown' }))[0]).toBe('open');
    expect(said('slot-match', over([160], { width: 'unknown' }))[0]).toBe('open');
    expect(said('slot-match', { rotary: { hold: 'unknown' } })[0]).toBe('open');
    expect(said('slot-match', { machine: { table: { slots: { along: 'unknown' } } } })[0]).toBe('open');
  });

  test('an adapter plate as thick as it has to be', () => {
    expect(easing('slot-match', over([63], {}, { plates: 30 }))).toEqual(['adapter-plate', 30]);
    expect(easing('slot-match', over([80], { width: 14 }, { plates: 30 }))).toEqual(['adapter-plate', 30]);
    expect(said('slot-match', over([63], {}, { plates: 29 }))[0]).toBe('fails');
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
