import { describe, expect, it } from 'vitest';
import { cuttingPower } from '../../../src/mechanics/forces/cutting-power.ts';
import { cuttingTorque } from '../../../src/mechanics/forces/cutting-torque.ts';
import { worstGravityMoment } from '../../../src/mechanics/forces/gravity-moment.ts';
import {
  hollowCylinderInertia,
  hollowCylinderInertiaAcross,
} from '../../../src/mechanics/forces/hollow-cylinder-inertia.ts';
import { blockInertia, cylinderInertia, parallelAxis } from '../../../src/mechanics/forces/inertia.ts';
import { removalRate } from '../../../src/mechanics/forces/removal-rate.ts';
import { spindleSpeed } from '../../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../../src/mechanics/forces/table-feed.ts';
import { BELOW, WITHOUT_BOUND } from './bounds.ts';

const tilted = { massMoment: 3000, eccentricMassMoment: 400, tilt: 90 };
const ring = { mass: 10, outer: 100, inner: 40 };

describe('on the edge of what can be', () => {
  it.each([
    ['no depth', () => cuttingPower(0, 5, 100, WITHOUT_BOUND), 0],
    ['no width', () => cuttingPower(5, 0, 100, WITHOUT_BOUND), 0],
    ['no feed', () => cuttingPower(5, 5, 0, WITHOUT_BOUND), 0],
    ['a material that resists nothing', () => cuttingPower(5, 5, 100, 0), 0],
    ['no power', () => cuttingTorque(0, 100), 0],
    ['power of a spindle that stands', () => cuttingTorque(1, 0), WITHOUT_BOUND],
    ['nothing removed, by depth', () => removalRate(0, 5, 100), 0],
    ['nothing removed, by width', () => removalRate(5, 0, 100), 0],
    ['nothing removed, by feed', () => removalRate(5, 5, 0), 0],
    ['a spindle that stands', () => spindleSpeed(0, 20), 0],
    ['a tool of no diameter', () => spindleSpeed(100, 0), WITHOUT_BOUND],
    ['a table that stands, by feed', () => tableFeed(0, 4, 1000), 0],
    ['a table that stands, by teeth', () => tableFeed(0.1, 0, 1000), 0],
    ['a table that stands, by speed', () => tableFeed(0.1, 4, 0), 0],
    ['no mass', () => hollowCylinderInertia({ ...ring, mass: 0 }), 0],
    ['a ring without a bore', () => hollowCylinderInertia({ ...ring, inner: 0 }), 0.05],
    ['a ring without a wall', () => hollowCylinderInertia({ ...ring, inner: 100 }), 0.1],
    ['a ring of no length', () => hollowCylinderInertiaAcross({ ...ring, inner: 0 }, 0), 0.025],
    ['no mass of a cylinder, however wide', () => cylinderInertia(0, WITHOUT_BOUND), 0],
    ['a cylinder without width, however heavy', () => cylinderInertia(WITHOUT_BOUND, 0), 0],
    ['a block without sides, however heavy', () => blockInertia(WITHOUT_BOUND, 0, 0), 0],
    ['nothing off the axis', () => parallelAxis(0, WITHOUT_BOUND, 0), 0],
    [
      'work that hangs on the axis',
      () => worstGravityMoment({ ...tilted, massMoment: 0, eccentricMassMoment: 0 }),
      0,
    ],
  ])('%s', (_what, compute, value) => expect(compute()).toBeCloseTo(value, 12));

  it('work that does not tilt pulls with its eccentricity alone, tilted over with both', () => {
    expect(worstGravityMoment({ ...tilted, tilt: 0 })).toBeCloseTo(0.4 * 9.80665, 12);
    expect(worstGravityMoment({ ...tilted, tilt: 180 })).toBeCloseTo(Math.hypot(3, 0.4) * 9.80665, 12);
  });
});

describe('one number beyond it', () => {
  it.each([
    ['a depth', () => cuttingPower(BELOW, 5, 100, 1500)],
    ['a width', () => cuttingPower(5, BELOW, 100, 1500)],
    ['a feed', () => cuttingPower(5, 5, BELOW, 1500)],
    ['a specific force', () => cuttingPower(5, 5, 100, BELOW)],
    ['a power', () => cuttingTorque(BELOW, 100)],
    ['a speed of a torque', () => cuttingTorque(1, BELOW)],
    ['a depth removed', () => removalRate(BELOW, 5, 100)],
    ['a width removed', () => removalRate(5, BELOW, 100)],
    ['a feed removed', () => removalRate(5, 5, BELOW)],
    ['a cutting speed', () => spindleSpeed(BELOW, 20)],
    ['a tool', () => spindleSpeed(100, BELOW)],
    ['a feed per tooth', () => tableFeed(BELOW, 4, 1000)],
    ['teeth', () => tableFeed(0.1, BELOW, 1000)],
    ['a spindle', () => tableFeed(0.1, 4, BELOW)],
    ['a mass of a ring', () => hollowCylinderInertia({ ...ring, mass: BELOW })],
    ['a bore', () => hollowCylinderInertia({ ...ring, inner: BELOW })],
    [
      'a bore wider than its ring, turned across',
      () => hollowCylinderInertiaAcross({ ...ring, inner: 101 }, 10),
    ],
    ['a length of a ring', () => hollowCylinderInertiaAcross(ring, BELOW)],
    ['a mass of a cylinder', () => cylinderInertia(BELOW, 1)],
    ['a radius of a cylinder', () => cylinderInertia(1, BELOW)],
    ['a first side of a block', () => blockInertia(1, BELOW, 1)],
    ['a second side of a block', () => blockInertia(1, 1, BELOW)],
    ['an inertia about the own axis', () => parallelAxis(BELOW, 1, 1)],
    ['a mass beside the axis', () => parallelAxis(1, BELOW, 1)],
    ['a distance from the axis', () => parallelAxis(1, 1, BELOW)],
    ['a mass moment', () => worstGravityMoment({ ...tilted, massMoment: BELOW })],
    ['a mass moment off center', () => worstGravityMoment({ ...tilted, eccentricMassMoment: BELOW })],
    ['a tilt', () => worstGravityMoment({ ...tilted, tilt: BELOW })],
    ['a tilt past half a turn', () => worstGravityMoment({ ...tilted, tilt: 180 - BELOW })],
  ])('%s is refused', (_what, compute) => expect(compute).toThrow(RangeError));
});
