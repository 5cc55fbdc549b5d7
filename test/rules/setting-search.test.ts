import { describe, expect, test } from 'vitest';
import type { Machine, Rotary } from '../../src/catalog/catalog.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement } from '../../src/rules/decision.ts';
import { expectClose } from '../close-to.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from './example-shop.ts';

const PART: Part = { ...EXAMPLE_PART, tolerance: 0.5 };

interface Change {
  readonly parts?: readonly Part[];
  readonly rotary?: Partial<Rotary>;
  readonly machine?: Partial<Machine>;
  readonly tools?: Partial<Answers['tools']>;
  readonly assume?: Answers['assume'];
}

function set({ parts = [PART], rotary = {}, machine = {}, tools = {}, assume = {} }: Change): Arrangement {
  const hold = { 'tilt-along-x': { keyWidth: 18, pitches: [80] } };
  const catalog = {
    ...EXAMPLE_CATALOG,
    rotaries: [{ ...EXAMPLE_ROTARY, hold, ...rotary }],
    machines: [{ ...EXAMPLE_MACHINE, ...machine }],
  };
  const answers = { ...EXAMPLE_ANSWERS, parts, tools: { ...EXAMPLE_ANSWERS.tools, ...tools }, assume };
  const [only] = decide(answers, catalog, { all: true }).arrangements;
  if (only === undefined) throw new Error('no arrangement');
  return only;
}

const LOW = { kind: 'lowered-table', adds: 75, price: 3200, height: 0 } as const;
const SPACER = { kind: 'column-spacer', adds: 200, price: 8600, height: 200 } as const;

describe('additions', () => {
  test('none where the nose is high enough', () => {
    expect(set({ machine: { clearance: [SPACER, LOW] } }).clearance).toEqual([]);
  });

  test('the smallest that makes it fit, before a larger one and before both', () => {
    // the top is at 40 + 40 + 55 mm, with 25 mm and a 150 mm tool 310 mm; the nose at 420 − 150 = 270 mm
    const found = set({ machine: { noseToTable: [100, 420], clearance: [SPACER, LOW] } });
    expect(found.clearance).toEqual(['lowered-table']);
    expect(found.passes).toBe('yes');
    expect(found.later).toMatchObject({ raised: 75 });
  });

  test('both, where one is not enough', () => {
    const found = set({ machine: { noseToTable: [50, 200], clearance: [SPACER, LOW] } });
    expect([...found.clearance].sort()).toEqual(['column-spacer', 'lowered-table']);
  });

  test('afterwards the work in a vise has to be raised by what the nose no longer comes down', () => {
    // 220 + 75 − 90 (shortest tool) − 75 (vise bed)
    const found = set({ machine: { noseToTable: [220, 420], clearance: [LOW] } });
    expect(found.later).toEqual({ raised: 75, subplate: 130, price: 900 });
  });
});

describe('plates', () => {
  test('an adapter where key or bolts do not go with the slots', () => {
    const found = set({ rotary: { hold: { 'tilt-along-x': { keyWidth: 14, pitches: [80] } } } });
    expect(found.plates).toMatchObject([{ under: 'rotary', thickness: 30, why: 'adapter' }]);
    expect(found.verdict).toBe('holds if');
  });

  test('an adapter also where the ceiling is too low whatever is done: that is what stops it, and no slot', () => {
    const found = set({
      rotary: { hold: { 'tilt-along-x': { keyWidth: 14, pitches: [80] } } },
      machine: { footprint: [2400, 2100, 5000] },
    });
    expect(found.dropped).toEqual({ stage: 'shop', check: 'ceiling' });
    expect(found.plates).toMatchObject([{ why: 'adapter' }]);
  });

  test('a riser where the work would swing into the table, rounded up to the step', () => {
    // the edge of the faceplate hangs 62.5 mm down at 90°, with 10 mm of gap over an axis at 50 mm
    const found = set({ rotary: { centerHeight: 50 } });
    expect(found.plates).toMatchObject([{ thickness: 25, why: 'riser' }]);
    expect(found.passes).toBe('yes');
  });
});

describe('place', () => {
  test('to the end of the table where that leaves room for one more vise', () => {
    const machine = {
      table: {
        size: [1000, 460],
        height: 850,
        load: 680,
        slots: { count: 5, width: 18, pitch: 80, center: true, along: 'x' },
      },
      travel: [1000, 510, 510],
    } as const;
    const found = set({ machine });
    expect(found.measures.viseStations).toBe(3);
    expect(Math.abs(found.place?.x ?? 0)).toBeGreaterThan(100);
  });

  test('where the base reaches the end of the table, it goes no further', () => {
    const found = set({});
    const left = (found.place?.x ?? 0) + (found.turned ? -280 : -140);
    const right = left + 420;
    expect(left).toBeGreaterThanOrEqual(-457.5 - 1e-6);
    expect(right).toBeLessThanOrEqual(457.5 + 1e-6);
    // travel to the left, 380 − 64.08 mm, and base to the right, 457.5 − 280 mm
    expectClose(found.place?.slackX ?? 0, 493.4167, { absolute: 1e-4 });
  });
});

describe('what is not known', () => {
  test('a size: it goes only as far to the end as every size allows', () => {
    const slots = { count: 5, width: 18, pitch: 80, center: true, along: 'x' } as const;
    const machine = {
      table: { size: [1200, 460], height: 850, load: 680, slots },
      travel: [700, 510, 510],
    } as const;
    const found = set({ parts: [{ ...PART, size: [[90, 140], 60, 55] }], machine });
    // 350 mm less half the diagonal of 140 × 60 mm and half the cutter
    expectClose(Math.abs(found.place?.x ?? 0), 350 - Math.hypot(140, 60) / 2 - 10, { absolute: 1e-6 });
    const travel = found.checks.filter(({ check }) => check === 'travel-x');
    expect(travel.map(({ verdict }) => verdict)).toEqual(['holds']);
  });

  test('how the base is held: both ways are judged, and the seller is asked', () => {
    const catalog = { ...EXAMPLE_CATALOG, rotaries: [{ ...EXAMPLE_ROTARY, hold: 'unknown' as const }] };
    const { arrangements, recommended } = decide({ ...EXAMPLE_ANSWERS, parts: [PART] }, catalog, {
      all: true,
    });
    expect(arrangements.map(({ mounting }) => mounting)).toEqual(['tilt-along-x', 'tilt-along-y']);
    expect(recommended).not.toBeNull();
    const [first] = arrangements;
    expect(first?.checks.find(({ check }) => check === 'slot-match')).toMatchObject({
      verdict: 'open',
      advisory: true,
    });
  });
});

describe('while something is open', () => {
  const tall: Part = { ...PART, name: 'Tall', size: [60, 60, 110] };

  test('a family that fails with the setting chosen now, but may hold with another, is open', () => {
    // bare, the tall part fails for every tool and the low one holds; raised, the low one hangs on the longest tool
    const change = {
      parts: [
        { ...PART, name: 'Low', approaches: ['top', 'sides'] as const, depthSide: 130, depthTop: 0 },
        { ...tall, yearly: { ...PART.yearly, quantity: 10 } },
      ],
      machine: { noseToTable: [140, 480], clearance: [LOW] } as const,
      // no riser thin enough to help both
      assume: { riserStep: 100 },
    };
    const unsure = set({ ...change, tools: { shortest: [90, 130], longest: [131, 170] } });
    const known = set({ ...change, tools: { shortest: 130, longest: 170 } });
    expect(known.parts.Tall).not.toBe('fails');
    expect(unsure.clearance).toEqual([]);
    expect(unsure.parts.Tall).toBe('open');
    expect(unsure.passes).not.toBe('no');
  });
});
