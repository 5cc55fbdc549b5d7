import { describe, expect, test } from 'vitest';
import type { CheckId } from '../../../src/rules/checks/ids.ts';
import { CHECKS } from '../../../src/rules/checks/index.ts';
import type { Check, Comparison } from '../../../src/rules/judging/check.ts';

/** What the declarations say beside their formulas, held against lists that are written down here. */

const idsOf = (which: (check: Check) => boolean): readonly CheckId[] =>
  CHECKS.filter(which)
    .map(({ id }) => id)
    .sort();

const comparisonsOf = (check: Check): readonly Comparison[] =>
  Array.isArray(check.comparisons) ? (check.comparisons as readonly Comparison[]) : [];

test('yes and no in numbers are these, and have no margin', () => {
  expect(idsOf(({ categorical }) => categorical === true)).toEqual([
    'axis-drives',
    'budget',
    'look-ahead',
    'rotating-work-offset',
    'slot-match',
    'tilt-range',
    'tilted-work-plane',
    'tool-center-point',
  ]);
});

test('heights are measured against the Z travel', () => {
  expect(idsOf(({ marginOverTravel }) => marginOverTravel === true)).toEqual([
    'index-clear',
    'reach-high',
    'reach-low',
    'table-clear',
  ]);
});

test('what stands back behind the main comparison of its check', () => {
  const secondary = CHECKS.flatMap((check) =>
    comparisonsOf(check)
      .filter((each) => each.secondary === true)
      .map(({ what }) => `${check.id}: ${what}`),
  ).sort();
  expect(secondary).toEqual([
    'power: phases',
    'power: voltage',
    'tool-length: height of the fixture for an undercut',
    'travel-x: tips on the far side of the rotary center',
    'travel-x: tips on the near side of the rotary center',
    'travel-y: tips on the far side of the rotary center',
    'travel-y: tips on the near side of the rotary center',
  ]);
});

test('measures that make a check hold are these', () => {
  const measures = CHECKS.flatMap((check) =>
    comparisonsOf(check).flatMap(({ easings = [] }) =>
      easings.map(({ measure, all }) => `${check.id}: ${measure}, ${all.length}`),
    ),
  );
  expect([...new Set(measures)].sort()).toEqual([
    'faceplate: rigid-fixture, 1',
    'hook-height: stays-on, 1',
    'index-accuracy: spindle-probe, 2',
    'index-clear: move-aside, 1',
    'lift: stays-on, 1',
    'look-ahead: look-ahead, 2',
    'power: phase-converter, 0',
    'power: transformer, 0',
    'reach-low: longer-tool-there, 1',
    'rotating-work-offset: rotating-work-offset, 1',
    'slot-match: adapter-plate, 1',
    'table-footprint: bolts-on-table, 2',
    'tailstock: tailstock, 1',
    'tilted-work-plane: tilted-work-plane, 1',
    'tool-center-point: tool-center-point, 1',
    'tool-length: buy-longer-tool, 2',
    'tool-length: raise-fixture, 0',
    'tool-length: raise-fixture, 1',
  ]);
});

describe.each(CHECKS.map((check) => [check.id, check] as const))('%s', (_id, check) => {
  test('names what can be changed, each once', () => {
    expect(check.remedies.length).toBeGreaterThan(0);
    expect(new Set(check.remedies).size).toBe(check.remedies.length);
  });

  test('compares something, and says what', () => {
    if (typeof check.comparisons === 'function') return;
    expect(check.comparisons.length).toBeGreaterThan(0);
    for (const { what } of comparisonsOf(check)) expect(what).not.toBe('');
  });
});
