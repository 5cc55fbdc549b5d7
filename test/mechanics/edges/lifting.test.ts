import { describe, expect, it } from 'vitest';
import { asymmetryMultiplier } from '../../../src/mechanics/lifting/asymmetry-multiplier.ts';
import { type Coupling, couplingMultiplier } from '../../../src/mechanics/lifting/coupling-multiplier.ts';
import { distanceMultiplier } from '../../../src/mechanics/lifting/distance-multiplier.ts';
import { frequencyMultiplier } from '../../../src/mechanics/lifting/frequency-multiplier.ts';
import { horizontalMultiplier } from '../../../src/mechanics/lifting/horizontal-multiplier.ts';
import { liftingIndex } from '../../../src/mechanics/lifting/lifting-index.ts';
import { recommendedWeightLimit } from '../../../src/mechanics/lifting/recommended-weight-limit.ts';
import { teamLiftLimit } from '../../../src/mechanics/lifting/team-lift-limit.ts';
import { verticalMultiplier } from '../../../src/mechanics/lifting/vertical-multiplier.ts';
import { BELOW, NONE, WITHOUT_BOUND } from './bounds.ts';

const seldom = { frequency: 0.2, duration: 'short', height: 100 } as const;

/** Ends of the ranges as in the tables of NIOSH 94-110 (test/published); each end itself still counts. */
describe('on the edge of what can be', () => {
  it.each([
    ['hands at the body', () => horizontalMultiplier(0), 1],
    ['hands as near as counts', () => horizontalMultiplier(25), 1],
    ['hands as far as can be lifted', () => horizontalMultiplier(63), 25 / 63],
    ['hands just beyond', () => horizontalMultiplier(63.1), 0],
    ['hands as far as can be lifted, in inches', () => horizontalMultiplier(25, 'us'), 0.4],
    ['hands just beyond, in inches', () => horizontalMultiplier(25.1, 'us'), 0],
    ['hands on the floor', () => verticalMultiplier(0), 0.775],
    ['hands at knuckle height', () => verticalMultiplier(75), 1],
    ['hands as high as counts', () => verticalMultiplier(175), 0.7],
    ['hands higher', () => verticalMultiplier(175.1), 0],
    ['hands as high as counts, in inches', () => verticalMultiplier(70, 'us'), 0.7],
    ['hands higher, in inches', () => verticalMultiplier(70.1, 'us'), 0],
    ['no travel', () => distanceMultiplier(0), 1],
    ['a travel as short as counts', () => distanceMultiplier(25), 1],
    ['a travel as long as counts', () => distanceMultiplier(175), 0.82 + 4.5 / 175],
    ['a longer one', () => distanceMultiplier(175.1), 0],
    ['a travel as long as counts, in inches', () => distanceMultiplier(70, 'us'), 0.82 + 1.8 / 70],
    ['a longer one, in inches', () => distanceMultiplier(70.1, 'us'), 0],
    ['no turn', () => asymmetryMultiplier(0), 1],
    ['as far as anybody turns', () => asymmetryMultiplier(135), 0.568],
    ['farther', () => asymmetryMultiplier(135.1), 0],
    ['a good grip at the floor', () => couplingMultiplier('good', 0), 1],
    ['a fair grip at the floor', () => couplingMultiplier('fair', 0), 0.95],
    ['a poor grip at the floor', () => couplingMultiplier('poor', 0), 0.9],
    ['a poor grip higher up', () => couplingMultiplier('poor', 100), 0.9],
    ['a good grip higher up', () => couplingMultiplier('good', 100), 1],
    ['never lifted counts as seldom', () => frequencyMultiplier({ ...seldom, frequency: 0 }), 1],
    ['as seldom as is in the table', () => frequencyMultiplier(seldom), 1],
    ['as often as is in the table', () => frequencyMultiplier({ ...seldom, frequency: 15 }), 0.28],
    ['oftener', () => frequencyMultiplier({ ...seldom, frequency: 15.1 }), 0],
    [
      'twelve times from the floor',
      () => frequencyMultiplier({ frequency: 12, duration: 'short', height: 0 }),
      0.37,
    ],
    ['at knuckle height', () => frequencyMultiplier({ frequency: 9, duration: 'long', height: 75 }), 0.15],
    ['below it', () => frequencyMultiplier({ frequency: 9, duration: 'long', height: 74.9 }), 0],
    ['at 30 in', () => frequencyMultiplier({ frequency: 9, duration: 'long', height: 30 }, 'us'), 0.15],
    ['below 30 in', () => frequencyMultiplier({ frequency: 9, duration: 'long', height: 29.9 }, 'us'), 0],
    ['nothing lifted', () => liftingIndex(0, 8), 0],
    ['where nothing may be lifted', () => liftingIndex(0, 0), WITHOUT_BOUND],
    ['a limit of nothing, shared', () => teamLiftLimit(0, 2), 0],
    ['one alone', () => teamLiftLimit(12, 1), 12],
    ['not quite two', () => teamLiftLimit(12, 1.9), 12],
    ['three', () => teamLiftLimit(12, 3), 18],
    ['four count as three', () => teamLiftLimit(12, 4), 18],
  ])('%s', (_what, compute, value) => expect(compute()).toBeCloseTo(value, 12));

  it.each([
    ['metric', 75, 74.9],
    ['us', 30, 29.9],
  ] as const)('a fair grip is as good as a good one from 75 cm, which is 30 in (%s)', (units, at, below) => {
    const lift = { horizontal: 10, travel: 10, asymmetry: 0, frequency: 0.2, duration: 'short' } as const;
    const limit = (vertical: number, coupling: Coupling): number =>
      recommendedWeightLimit({ ...lift, vertical, origin: vertical, coupling }, units);
    expect(limit(at, 'fair') / limit(at, 'good')).toBe(1);
    expect(limit(below, 'fair') / limit(below, 'good')).toBeCloseTo(0.95, 12);
  });
});

describe('one number beyond it', () => {
  it.each([
    ['hands behind the body', () => horizontalMultiplier(BELOW)],
    ['hands below the floor', () => verticalMultiplier(BELOW)],
    ['hands nowhere', () => verticalMultiplier(NONE)],
    ['a travel', () => distanceMultiplier(BELOW)],
    ['a travel that is none', () => distanceMultiplier(NONE)],
    ['a turn', () => asymmetryMultiplier(BELOW)],
    ['a turn that is none', () => asymmetryMultiplier(NONE)],
    ['a grip below the floor', () => couplingMultiplier('good', BELOW)],
    ['a frequency', () => frequencyMultiplier({ ...seldom, frequency: BELOW })],
    ['a height of what is lifted often', () => frequencyMultiplier({ ...seldom, height: BELOW })],
    ['a load', () => liftingIndex(BELOW, 1)],
    ['a limit', () => liftingIndex(1, BELOW)],
    ['a limit that is shared', () => teamLiftLimit(BELOW, 2)],
    ['fewer than one', () => teamLiftLimit(10, 1 + BELOW)],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});
