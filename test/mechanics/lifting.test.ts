import { describe, expect, it } from 'vitest';
import { fitsEitherWay } from '../../src/mechanics/building/fits-either-way.ts';
import { floorPressure } from '../../src/mechanics/building/floor-pressure.ts';
import { supplyCurrent } from '../../src/mechanics/building/supply-current.ts';
import { asymmetryMultiplier } from '../../src/mechanics/lifting/asymmetry-multiplier.ts';
import { couplingMultiplier } from '../../src/mechanics/lifting/coupling-multiplier.ts';
import { distanceMultiplier } from '../../src/mechanics/lifting/distance-multiplier.ts';
import { forkliftCapacity, loadCenter } from '../../src/mechanics/lifting/forklift-capacity.ts';
import { frequencyMultiplier } from '../../src/mechanics/lifting/frequency-multiplier.ts';
import { horizontalMultiplier } from '../../src/mechanics/lifting/horizontal-multiplier.ts';
import { liftingIndex } from '../../src/mechanics/lifting/lifting-index.ts';
import { slingLegTension } from '../../src/mechanics/lifting/sling-leg-tension.ts';
import { teamLiftLimit } from '../../src/mechanics/lifting/team-lift-limit.ts';
import { unequalSlingLegs } from '../../src/mechanics/lifting/unequal-sling-legs.ts';
import { verticalMultiplier } from '../../src/mechanics/lifting/vertical-multiplier.ts';

const NONE = Number.NaN;

describe('what cannot be is refused', () => {
  it.each([
    ['a reach', () => horizontalMultiplier(NONE)],
    ['a height', () => verticalMultiplier(-1)],
    ['a travel', () => distanceMultiplier(-1)],
    ['a turn', () => asymmetryMultiplier(-1)],
    ['a coupling below the floor', () => couplingMultiplier('good', NONE)],
    ['a frequency', () => frequencyMultiplier({ frequency: -1, duration: 'short', height: 0 })],
    ['a load', () => liftingIndex(-1, 1)],
    ['nobody', () => teamLiftLimit(10, 0)],
    ['a sling without legs', () => slingLegTension({ load: 1, legs: 0, angle: 60 })],
    ['a sling under its load', () => unequalSlingLegs({ load: 1, first: 1, second: 1, height: 0 })],
    ['forks', () => forkliftCapacity({ rated: 1, ratedCenter: 0, center: 1 })],
    ['a length', () => loadCenter(-1)],
    ['two phases', () => supplyCurrent(1, 400, 2)],
    ['no voltage', () => supplyCurrent(1, 0, 3)],
    ['no floor', () => floorPressure(1, 0)],
    ['no bay', () => fitsEitherWay([1, 1], [NONE, 1])],
  ])('%s', (_what, compute) => expect(compute).toThrow(RangeError));
});

describe('a bay', () => {
  it('takes a machine that just goes in, either way round', () => {
    expect(fitsEitherWay([3600, 4000], [4000, 3600])).toBe(true);
    expect(fitsEitherWay([3600, 4001], [4000, 3600])).toBe(false);
    expect(fitsEitherWay([3601, 3601], [4000, 3600])).toBe(false);
  });
});
