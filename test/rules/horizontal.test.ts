import { describe, expect, it } from 'vitest';
import type { BuiltIn, Catalog, Machine, Rotary } from '../../src/catalog/catalog.ts';
import type { Part } from '../../src/questions/answers.ts';
import { candidatesOf } from '../../src/rules/arranging/candidates.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement } from '../../src/rules/decision.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_BUILT_IN,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from './example-shop.ts';

/** Invented: a horizontal mill, a single axis to lie on its back on it, work that is cut all around. */

const MILL: Machine = {
  ...EXAMPLE_MACHINE,
  id: 'level-mill',
  spindle: 'horizontal',
  noseToTable: [50, 600],
  spindleToTable: [80, 600],
};
const { 'axis-along-y': acrossSlots, ...alongSlots } =
  EXAMPLE_ROTARY.hold === 'unknown' ? {} : EXAMPLE_ROTARY.hold;
const AXIS: Rotary = {
  ...EXAMPLE_ROTARY,
  id: 'axis',
  class: 'single-axis',
  tilt: null,
  faceOffset: 230,
  hold: { ...alongSlots, ...(acrossSlots === undefined ? {} : { 'axis-along-y': acrossSlots }) },
};
const AROUND: Part = {
  ...EXAMPLE_PART,
  size: [60, 60, 80],
  approaches: ['around'],
  holding: { ...EXAMPLE_PART.holding, height: 50 },
};

const catalog = (machine: Partial<Machine>, rotary: Partial<Rotary> = {}): Catalog => ({
  ...EXAMPLE_CATALOG,
  machines: [{ ...MILL, ...machine }],
  rotaries: [{ ...AXIS, ...rotary }],
});
const idsOf = (from: Catalog): readonly string[] => candidatesOf(from).map(({ id }) => id);

function only(machine: Partial<Machine>, part: Partial<Part> = {}): Arrangement {
  const answers = { ...EXAMPLE_ANSWERS, parts: [{ ...AROUND, ...part }] };
  const [arrangement, ...others] = decide(answers, catalog(machine), { all: true }).arrangements;
  if (arrangement === undefined || others.length > 0) throw new Error('not one arrangement');
  return arrangement;
}
const verdictOf = ({ checks }: Arrangement, id: string) => checks.find(({ check }) => check === id)?.verdict;

describe('on a horizontal mill', () => {
  it('a single axis stands upright, once, where its base can be held so', () => {
    expect(idsOf(catalog({}))).toEqual(['level-mill+axis/axis-along-y']);
    expect(idsOf(catalog({}, { hold: alongSlots }))).toEqual([]);
    expect(idsOf(catalog({}, { hold: 'unknown' }))).toEqual(['level-mill+axis/axis-along-y']);
  });

  it('a rotary that tilts is not enumerated', () => {
    expect(idsOf({ ...catalog({}), rotaries: [EXAMPLE_ROTARY] })).toEqual([]);
  });

  it('work within the heights of the spindle holds, with no vises counted and no height to move along', () => {
    const found = only({});
    expect(found.parts).toEqual({ Example: 'holds' });
    expect(found.plates).toEqual([]);
    expect(found.measures.viseStations).toBeNull();
    expect(found.place?.slackY).toBe(0);
    expect(found.place?.slackX).toBeGreaterThan(0);
  });

  it('checks that look at a column, a housing or a table below the work are not asked', () => {
    const asked = only({}).checks.map(({ check }) => check);
    expect(asked).not.toContain('column');
    expect(asked).not.toContain('housing-clear');
    expect(asked).not.toContain('table-clear');
    expect(asked).toContain('travel-y');
  });

  it('a spindle that stays too high over the table is met by a riser', () => {
    const found = only({ spindleToTable: [300, 700] });
    // 300 − (230 + 50), in steps of 5
    expect(found.plates.map(({ thickness, why }) => [thickness, why])).toEqual([[20, 'riser']]);
    expect(verdictOf(found, 'travel-y')).toBe('holds');
  });

  it('a spindle that does not come up to the end of the work is met by nothing', () => {
    const found = only({ spindleToTable: [80, 360] });
    expect(verdictOf(found, 'travel-y')).toBe('fails');
    expect(found.plates).toEqual([]);
  });

  it('no clearance addition is tried', () => {
    expect(only({ noseToTable: [50, 200] }).clearance).toEqual([]);
    expect(verdictOf(only({ noseToTable: [50, 200] }), 'reach-high')).toBe('fails');
  });

  it('gravity off the axis turns nothing', () => {
    const torque = (machine: Partial<Machine>): unknown =>
      decide(
        { ...EXAMPLE_ANSWERS, parts: [{ ...AROUND, mass: 20, eccentricity: 30 }] },
        {
          ...catalog(machine),
          rotaries: [{ ...AXIS, hold: { 'axis-along-y': acrossSlots ?? { keyWidth: 18, pitches: [80] } } }],
        },
        { all: true },
      ).arrangements[0]?.checks.find(({ check }) => check === 'brake-rotary')?.need;
    const [upright, level] = [torque({}), torque({ spindle: 'vertical', spindleToTable: null })];
    expect(Number(level) - Number(upright)).toBeGreaterThan(5.88);
    expect(Number(level) - Number(upright)).toBeLessThan(5.89);
  });
});

describe('a horizontal machine with a table of its own', () => {
  const own = (builtIn: Partial<BuiltIn>): Catalog => {
    const { reach } = EXAMPLE_BUILT_IN;
    const table = { ...EXAMPLE_BUILT_IN, tiltMoment: 4, leans: 'downward', reach, ...builtIn } as const;
    return catalog({
      id: 'own',
      kind: 'five-axis',
      table: null,
      noseToTable: 'unknown',
      spindleToTable: null,
      builtIn: table,
    });
  };
  const found = (builtIn: Partial<BuiltIn>): Arrangement => {
    const part: Part = { ...EXAMPLE_PART, mass: 5 };
    const [arrangement] = decide({ ...EXAMPLE_ANSWERS, parts: [part] }, own(builtIn), {
      all: true,
    }).arrangements;
    if (arrangement === undefined) throw new Error('nothing');
    return arrangement;
  };

  it('is one arrangement, without vises', () => {
    expect(idsOf(own({}))).toEqual(['own/built-in']);
    expect(found({}).measures.viseStations).toBeNull();
  });

  it('a small tilt axis that is level fails, one that is upright holds', () => {
    expect(verdictOf(found({}), 'tilt-moment')).toBe('fails');
    expect(verdictOf(found({ tiltAxis: 'along-y', leans: 'toward-left' }), 'tilt-moment')).toBe('holds');
  });

  it('of which nobody says how its tilt axis lies stays open, and asks the seller', () => {
    const open = found({ tiltAxis: 'unknown' as const, leans: 'unknown' as const });
    const check = open.checks.find((each) => each.check === 'tilt-moment');
    expect(check?.verdict).toBe('open');
    expect(check?.gaps.map(({ path }) => path)).toContain('machines[own].builtIn.tiltAxis');
  });

  it('the work leans downward or upward, so that the reach to the other side is not needed', () => {
    const reach = (y: readonly [number, number]) => ({ ...EXAMPLE_BUILT_IN.reach, y });
    expect(verdictOf(found({ reach: reach([-255, 80]) }), 'travel-y')).toBe('holds');
    expect(verdictOf(found({ reach: reach([-255, 80]), leans: 'upward' }), 'travel-y')).toBe('fails');
  });
});
