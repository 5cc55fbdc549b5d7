import { describe, expect, test } from 'vitest';
import type { BuiltIn, Machine, Rotary } from '../../src/catalog/catalog.ts';
import type { Part } from '../../src/questions/answers.ts';
import { lookAhead } from '../../src/rules/checks/features/look-ahead.ts';
import { housingClear } from '../../src/rules/checks/machine/housing-clear.ts';
import { spindleTorque } from '../../src/rules/checks/machine/spindle-torque.ts';
import { tiltMoment } from '../../src/rules/checks/work/tilt-moment.ts';
import { decide } from '../../src/rules/decide.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
  judgeExample,
} from './example-shop.ts';

const PART: Part = { ...EXAMPLE_PART, tolerance: 0.5 };

interface Change {
  readonly part?: Partial<Part>;
  readonly rotary?: Partial<Rotary>;
  readonly machine?: Partial<Machine>;
  readonly work?: Partial<typeof EXAMPLE_ANSWERS.work>;
}

const decided = ({ part = {}, rotary = {}, machine = {}, work = {} }: Change) =>
  decide(
    { ...EXAMPLE_ANSWERS, parts: [{ ...PART, ...part }], work: { ...EXAMPLE_ANSWERS.work, ...work } },
    {
      ...EXAMPLE_CATALOG,
      rotaries: [{ ...EXAMPLE_ROTARY, ...rotary }],
      machines: [{ ...EXAMPLE_MACHINE, ...machine }],
    },
    { all: true },
  );

describe('a value for the seller beside an answer that nobody knows', () => {
  const weak = { spindleDrive: { torque: 5, power: 'unknown' } } as const;

  test('does not silence the answer where that can still make it fail', () => {
    const steel = { material: 'steel-carbon', cut: 'unknown' } as const;
    expect(judgeExample(spindleTorque, { part: steel, machine: weak })).toMatchObject({
      verdict: 'open',
      advisory: false,
    });
    const heavy = { ...steel, cut: 'heavy' } as const;
    expect(judgeExample(spindleTorque, { part: heavy, machine: weak }).verdict).toBe('fails');
  });

  test('stays for the seller where no answer could make it fail', () => {
    const machine = { spindleDrive: { torque: 'unknown', power: 'unknown' } } as const;
    const part = { material: 'steel-carbon', cut: 'unknown' } as const;
    expect(judgeExample(spindleTorque, { part, machine })).toMatchObject({ verdict: 'open', advisory: true });
  });
});

test('what is for the seller hides no measure that is needed for sure', () => {
  const contour = { feed: 10000, radius: 25, chordError: 0.002 };
  const outcome = judgeExample(lookAhead, {
    part: { motion: 'surfaces', contour },
    machine: { acceleration: 'unknown', blocks: { standard: 100, lookAhead: 1200 } },
  });
  expect(outcome).toMatchObject({ verdict: 'holds if', easing: 'look-ahead', advisory: false });
  const asked = outcome.alsoAsked.flatMap(({ gaps }) => gaps.map(({ path }) => path));
  expect(asked).toContain('machines[example-mill].acceleration');
});

test('the nose of a machine that leaves it out is named where it decides about the housing', () => {
  const outcome = judgeExample(housingClear, {
    part: { approaches: ['sides'] },
    rotary: { housing: [{ along: [-140, -100], across: [-130, 130], top: 900 }] },
    machine: { noseDiameter: 'unknown' },
  });
  expect(outcome.verdict).toBe('open');
  const gaps = outcome.openOn.flatMap((each) => each.gaps.map(({ path }) => path));
  expect(gaps).toContain('machines[example-mill].noseDiameter');
});

describe('a built-in table of which nobody says which way it leans', () => {
  const { hold: _, housing: __, ...rest } = EXAMPLE_ROTARY;
  const table = (leans: BuiltIn['leans'], y: readonly [number, number]): Change => {
    const reach = { x: [-400, 400], y, noseToFace: [60, 600] } as const;
    const slots = { width: 14, pitch: 63 };
    const builtIn = {
      ...rest,
      faceOffset: 10,
      tiltAxis: 'along-x',
      leans,
      reach,
      removable: false,
      slots,
    } as const;
    return { machine: { kind: 'five-axis', builtIn: builtIn as unknown as BuiltIn, table: null } };
  };

  test('holds only where it holds both ways, and says whom to ask', () => {
    expect(decided(table('toward-door', [-300, 90])).outcome).toBe('recommended');
    expect(decided(table('toward-column', [-300, 90])).outcome).toBe('none');
    const { outcome, unknowns } = decided(table('unknown', [-300, 90]));
    expect(outcome).toBe('open');
    expect(unknowns[0]).toMatchObject({
      answer: 'machines[example-mill].builtIn.leans',
      decides: true,
      ask: 'seller',
    });
    expect(decided(table('unknown', [-300, 300])).outcome).toBe('recommended');
    expect(decided(table('unknown', [-60, 60])).outcome).toBe('none');
  });
});

describe('a price', () => {
  const priceOf = (change: Change) => decided(change).arrangements[0]?.measures.price;

  test('is a range where nobody knows whether a feature is needed', () => {
    const part = { eccentricity: [0, 30] as const };
    const withoutPlane = { features: { rotatingWorkOffset: 4200, tiltedWorkPlane: 'standard' as const } };
    const sure = Number(priceOf({ part: { eccentricity: 0 }, machine: withoutPlane }));
    expect(priceOf({ part, machine: withoutPlane, work: { loading: 'by-hand' } })).toEqual([
      sure,
      sure + 4200,
    ]);
    expect(priceOf({ part: { eccentricity: 30 }, machine: withoutPlane })).toBe(sure + 4200);
  });

  test('is a range where nobody says how many drives are fitted', () => {
    const drives = (fitted: number | 'unknown') => ({ axisDrives: { fitted, offered: 2, priceEach: 4200 } });
    const [two, none] = [Number(priceOf({ machine: drives(2) })), Number(priceOf({ machine: drives(0) }))];
    expect(priceOf({ machine: drives('unknown') })).toEqual([two, none]);
    expect(none - two).toBe(8400);
  });
});

describe('slots along Y', () => {
  const table = (along: 'x' | 'y' | 'unknown') => {
    if (EXAMPLE_MACHINE.table === null) throw new Error('the example has a table');
    return {
      table: {
        ...EXAMPLE_MACHINE.table,
        size: [915, 600] as const,
        slots: { ...EXAMPLE_MACHINE.table.slots, along },
      },
    };
  };
  const hold = { 'tilt-along-x': { keyWidth: 18, pitches: [80] } };

  test('a base is held the other way round, and only so', () => {
    const mountings = (along: 'x' | 'y') =>
      decided({ rotary: { hold }, machine: table(along) }).arrangements.map(({ mounting }) => mounting);
    expect(mountings('x')).toEqual(['tilt-along-x']);
    expect(mountings('y')).toEqual(['tilt-along-y']);
  });

  test('which way they run is asked where the catalog leaves it out', () => {
    const [first] = decided({ rotary: { hold }, machine: table('unknown') }).arrangements;
    const slots = first?.checks.find(({ check }) => check === 'slot-match');
    expect(slots).toMatchObject({ verdict: 'open', advisory: true });
    expect(slots?.gaps.map(({ path }) => path)).toContain('machines[example-mill].table.slots.along');
  });
});

test('a part that may be round or a block fails only where both do', () => {
  const change = {
    part: { shape: 'unknown' as const, size: [100, 100, 50] as const },
    rotary: { swing: 120 },
  };
  const [first] = decided(change).arrangements;
  expect(first?.parts.Example).toBe('open');
});

test('the least moment of an eccentric mass below the axis lies inside its range', () => {
  const given = (mass: number | readonly [number, number]) => ({
    part: { mass, eccentricity: 60, holding: { mass: 30 } },
    rotary: { faceOffset: -60 },
  });
  const range = judgeExample(tiltMoment, given([0.1, 20])).need;
  for (const mass of [0.1, 1, 2, 3, 4, 5, 8, 12, 20]) {
    const { low } = judgeExample(tiltMoment, given(mass)).need;
    expect(low).toBeGreaterThanOrEqual(range.low - 1e-9);
    expect(low).toBeLessThanOrEqual(range.high + 1e-9);
  }
  expect(judgeExample(tiltMoment, given(4)).need.low).toBeLessThan(
    judgeExample(tiltMoment, given(0.1)).need.low,
  );
});

test('vises: a part that may stand or lie leaves as many as it does in one of the two', () => {
  const bar = { shape: 'round', diameter: 40, length: 180, material: 'aluminum-wrought' } as const;
  const stations = (stands: Part['stands']) =>
    decided({ part: { ...bar, stands } }).arrangements[0]?.measures.viseStations;
  const ends = [stations('upright'), stations('lying')].map(Number);
  const unsure = stations('unknown');
  const [low, high] = Array.isArray(unsure) ? unsure : [unsure, unsure];
  expect(Number(low)).toBeLessThanOrEqual(Math.min(...ends));
  expect(Number(high)).toBeGreaterThanOrEqual(Math.max(...ends));
});
