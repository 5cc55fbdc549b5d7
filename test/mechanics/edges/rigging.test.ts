import { describe, expect, it } from 'vitest';
import { eyeBoltRating } from '../../../src/mechanics/lifting/eye-bolt-rating.ts';
import { forkliftCapacity, loadCenter } from '../../../src/mechanics/lifting/forklift-capacity.ts';
import { isUsableSlingAngle, slingLegTension } from '../../../src/mechanics/lifting/sling-leg-tension.ts';
import { unequalSlingLegs } from '../../../src/mechanics/lifting/unequal-sling-legs.ts';
import { expectClose } from '../../close-to.ts';
import { BELOW, NONE } from './bounds.ts';

const sling = { load: 1000, legs: 2, angle: 60 };
const picks = { load: 1000, first: 3, second: 3, height: 4 };
const forks = { rated: 1500, ratedCenter: 500, center: 600 };

describe('on the edge of what can be', () => {
  it.each([
    ['an eye bolt pulled straight', () => eyeBoltRating(0), 1],
    ['a rating holds up to its angle', () => eyeBoltRating(5), 1],
    ['and not beyond', () => eyeBoltRating(5.1), 0.8],
    ['pulled across', () => eyeBoltRating(90), 0.25],
    ['pulled nearly across', () => eyeBoltRating(45.1), 0.25],
    ['no load on the sling', () => slingLegTension({ ...sling, load: 0 }), 0],
    ['one leg, however it is said to stand', () => slingLegTension({ load: 1000, legs: 1, angle: 0 }), 1000],
    ['the flattest legs', () => slingLegTension({ ...sling, angle: 30 }), 1000],
    ['legs that count as upright', () => slingLegTension({ ...sling, angle: 85 }), 500],
    ['upright legs', () => slingLegTension({ ...sling, angle: 90 }), 500],
    [
      'legs just not upright',
      () => slingLegTension({ ...sling, angle: 84.9 }),
      500 / Math.sin((84.9 * Math.PI) / 180),
    ],
    ['a fork truck that carries nothing', () => forkliftCapacity({ ...forks, rated: 0 }), 0],
    ['a load as far out as the rating', () => forkliftCapacity({ ...forks, center: 500 }), 1500],
    ['a load at the face of the forks', () => forkliftCapacity({ ...forks, center: 0 }), 1500],
    ['a load of no length', () => loadCenter(0), 0],
  ])('%s', (_what, compute, value) => expectClose(compute(), value, { percent: 1e-9 }));

  it('legs are usable from 30° to 90°', () => {
    expect([29.9, 30, 90, 90.1].map(isUsableSlingAngle)).toEqual([false, true, true, false]);
  });

  it('a pick right below the hook carries all of it', () => {
    expect(unequalSlingLegs({ ...picks, first: 0 })).toEqual([1000, 0]);
    expect(unequalSlingLegs({ ...picks, second: 0 })).toEqual([0, 1000]);
    expect(unequalSlingLegs({ ...picks, load: 0 })).toEqual([0, 0]);
  });
});

describe('one number beyond it', () => {
  it.each([
    ['an angle of an eye bolt', () => eyeBoltRating(BELOW)],
    ['an eye bolt pulled backward', () => eyeBoltRating(90 - BELOW)],
    ['a load on a sling', () => slingLegTension({ ...sling, load: BELOW })],
    ['a load on one leg', () => slingLegTension({ load: NONE, legs: 1, angle: 60 })],
    ['no whole leg', () => slingLegTension({ ...sling, legs: 1 + BELOW })],
    ['legs that stand too flat', () => slingLegTension({ ...sling, angle: 30 + BELOW })],
    ['a load on unequal legs', () => unequalSlingLegs({ ...picks, load: BELOW })],
    ['a first pick', () => unequalSlingLegs({ ...picks, first: BELOW })],
    ['a second pick', () => unequalSlingLegs({ ...picks, second: BELOW })],
    ['both picks right below the hook', () => unequalSlingLegs({ ...picks, first: 0, second: 0 })],
    ['a hook as low as its picks', () => unequalSlingLegs({ ...picks, height: 0 })],
    ['a hook nowhere', () => unequalSlingLegs({ ...picks, height: NONE })],
    ['a rating', () => forkliftCapacity({ ...forks, rated: BELOW })],
    ['a load center of the rating', () => forkliftCapacity({ ...forks, ratedCenter: 0 })],
    ['a load behind the forks', () => forkliftCapacity({ ...forks, center: BELOW })],
    ['a length', () => loadCenter(BELOW)],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});
