/**
 * Waters TR, Putz-Anderson V, Garg A: Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH)
 * 94-110, 1994, revised 2021. Formulas and tables PRINTED (transcriptions that quote page and table); its worked
 * examples stand in niosh-worked-examples.test.ts. Metric and US constants are not conversions of each other: each
 * is computed in its own system. There is no formula here for ISO 11228-1 and EN 1005-2 (REPRINT and from memory):
 * their reference masses go by sex and age, which nobody is asked. Nor for the classes of duration (pp. 13-14) and
 * for where the equation does not apply (p. 6): those are words, which the lifting section of the report says.
 */
import { describe, expect, it } from 'vitest';
import { asymmetryMultiplier } from '../../src/mechanics/lifting/asymmetry-multiplier.ts';
import { couplingMultiplier } from '../../src/mechanics/lifting/coupling-multiplier.ts';
import { distanceMultiplier } from '../../src/mechanics/lifting/distance-multiplier.ts';
import { FREQUENCY_ROWS, frequencyMultiplier } from '../../src/mechanics/lifting/frequency-multiplier.ts';
import { horizontalMultiplier } from '../../src/mechanics/lifting/horizontal-multiplier.ts';
import { liftingIndex } from '../../src/mechanics/lifting/lifting-index.ts';
import { type Lift, recommendedWeightLimit } from '../../src/mechanics/lifting/recommended-weight-limit.ts';
import { verticalMultiplier } from '../../src/mechanics/lifting/vertical-multiplier.ts';
import { expectClose } from '../close-to.ts';

const FOURTH_DECIMAL = { absolute: 0.0005 };

describe('multipliers of the formula (PRINTED, values DERIVED)', () => {
  it.each([
    [20, 1],
    [25, 1],
    [40, 0.625],
    [50, 0.5],
    [63, 0.3968],
    [64, 0],
  ])('hands %d cm before the body: %d', (h, hm) => expectClose(horizontalMultiplier(h), hm, FOURTH_DECIMAL));

  it.each([
    [0, 0.775],
    [25, 0.85],
    [50, 0.925],
    [75, 1],
    [100, 0.925],
    [125, 0.85],
    [150, 0.775],
    [175, 0.7],
    [176, 0],
  ])('hands %d cm high: %d', (v, vm) => expectClose(verticalMultiplier(v), vm, FOURTH_DECIMAL));

  it.each([
    [20, 1],
    [25, 1],
    [40, 0.9325],
    [55, 0.9018],
    [70, 0.8843],
    [85, 0.8729],
    [100, 0.865],
    [130, 0.8546],
    [175, 0.8457],
    [176, 0],
  ])('a travel of %d cm: %d', (d, dm) => expectClose(distanceMultiplier(d), dm, FOURTH_DECIMAL));

  it.each([
    [0, 1],
    [15, 0.952],
    [30, 0.904],
    [45, 0.856],
    [60, 0.808],
    [90, 0.712],
    [135, 0.568],
    [136, 0],
  ])('a turn of %d degrees: %d', (a, am) => expectClose(asymmetryMultiplier(a), am, FOURTH_DECIMAL));
});

describe('where tables and formula differ, the formula governs', () => {
  it('Table 1 prints .46 at 22 in and .44 at 23 in', () => {
    expectClose(horizontalMultiplier(22, 'us'), 0.4545, FOURTH_DECIMAL);
    expectClose(horizontalMultiplier(23, 'us'), 0.4348, FOURTH_DECIMAL);
    expect(horizontalMultiplier(26, 'us')).toBe(0);
  });

  it('Table 3 prints .86 at 130 cm', () => expect(distanceMultiplier(130)).toBeLessThan(0.855));
});

/** Table 5 (PRINTED): lifts a minute; up to 1 h, 2 h, 8 h, each with hands below 75 cm and from there on. */
const TABLE_5 = [
  [0.2, 1.0, 1.0, 0.95, 0.95, 0.85, 0.85],
  [0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
  [1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
  [2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
  [3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
  [4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
  [5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
  [6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
  [7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
  [8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
  [9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
  [10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
  [11, 0.41, 0.41, 0, 0.23, 0, 0],
  [12, 0.37, 0.37, 0, 0.21, 0, 0],
  [13, 0, 0.34, 0, 0, 0, 0],
  [14, 0, 0.31, 0, 0, 0, 0],
  [15, 0, 0.28, 0, 0, 0, 0],
  [15.1, 0, 0, 0, 0, 0, 0],
] as const;

describe('Table 5, every row', () => {
  it.each(TABLE_5)('%d lifts a minute', (frequency, ...shares) => {
    const found = (['short', 'moderate', 'long'] as const).flatMap((duration) =>
      [74, 75].map((height) => frequencyMultiplier({ frequency, duration, height })),
    );
    expect(found).toEqual(shares);
    const inInches = (['short', 'moderate', 'long'] as const).flatMap((duration) =>
      [29, 30].map((height) => frequencyMultiplier({ frequency, duration, height }, 'us')),
    );
    expect(inInches).toEqual(shares);
  });

  it('has no row but those that are printed, up to 15 a minute', () => {
    expect(FREQUENCY_ROWS).toEqual(TABLE_5.filter(([frequency]) => frequency <= 15));
  });

  it('rarer than once in five minutes counts as that', () => {
    expect(frequencyMultiplier({ frequency: 0, duration: 'long', height: 80 })).toBe(0.85);
  });

  it('is read between its rows as Example 7 does: 2.4 a minute gives .898', () => {
    expectClose(frequencyMultiplier({ frequency: 2.4, duration: 'short', height: 50 }), 0.898, {
      absolute: 1e-9,
    });
  });
});

describe('Table 7, every row', () => {
  it.each([
    ['good', 1, 1],
    ['fair', 0.95, 1],
    ['poor', 0.9, 0.9],
  ] as const)('%s', (coupling, below, above) => {
    expect(couplingMultiplier(coupling, 74.9)).toBe(below);
    expect(couplingMultiplier(coupling, 75)).toBe(above);
  });

  it('a fair coupling from 75 cm is 1.00; a public test suite that asserts .95 there is wrong', () => {
    expect(couplingMultiplier('fair', 100)).toBe(1);
  });
});

const lift = (change: Partial<Lift>): Lift => ({
  horizontal: 25,
  vertical: 75,
  origin: 75,
  travel: 25,
  asymmetry: 0,
  frequency: 0.2,
  duration: 'short',
  coupling: 'good',
  ...change,
});

describe('the whole equation', () => {
  it('the ideal lift is the load constant, 23 kg or 51 lb, which are not the same', () => {
    expect(recommendedWeightLimit(lift({}))).toBe(23);
    const ideal = lift({ horizontal: 10, vertical: 30, origin: 30, travel: 10 });
    expect(recommendedWeightLimit(ideal, 'us')).toBe(51);
    expect(51 * 0.45359237).toBeGreaterThan(23.1);
  });

  it.each([
    [
      20,
      { horizontal: 40, vertical: 20, origin: 20, travel: 80, asymmetry: 30, frequency: 1, coupling: 'fair' },
      8.491,
      2.356,
    ],
    [15, { horizontal: 30, travel: 20 }, 19.167, 0.783],
    [
      30,
      { horizontal: 50, vertical: 40, origin: 40, travel: 70, duration: 'moderate', coupling: 'poor' },
      7.782,
      3.855,
    ],
  ] as const)('%d kg, metric (DERIVED)', (load, change, limit, index) => {
    const found = recommendedWeightLimit(lift(change));
    expectClose(found, limit, { absolute: 0.005 });
    expectClose(liftingIndex(load, found), index, { absolute: 0.005 });
  });

  it('nothing may be lifted so far from the body', () => {
    expect(recommendedWeightLimit(lift({ horizontal: 63.1 }))).toBe(0);
    expect(liftingIndex(1, 0)).toBe(Number.POSITIVE_INFINITY);
  });
});
