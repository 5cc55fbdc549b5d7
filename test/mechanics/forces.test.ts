import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centeredEngagementAngle } from '../../src/mechanics/forces/centered-engagement-angle.ts';
import { cuttingPower } from '../../src/mechanics/forces/cutting-power.ts';
import { cuttingTorque } from '../../src/mechanics/forces/cutting-torque.ts';
import { drillThrust } from '../../src/mechanics/forces/drill-thrust.ts';
import { entryAngle } from '../../src/mechanics/forces/entry-angle.ts';
import { worstGravityMoment } from '../../src/mechanics/forces/gravity-moment.ts';
import { greatestChipThickness } from '../../src/mechanics/forces/greatest-chip-thickness.ts';
import { hollowCylinderInertia } from '../../src/mechanics/forces/hollow-cylinder-inertia.ts';
import { blockInertia, cylinderInertia, parallelAxis } from '../../src/mechanics/forces/inertia.ts';
import { meanChipThickness } from '../../src/mechanics/forces/mean-chip-thickness.ts';
import { peakTangentialForce } from '../../src/mechanics/forces/peak-tangential-force.ts';
import { removalRate } from '../../src/mechanics/forces/removal-rate.ts';
import { specificCuttingForce } from '../../src/mechanics/forces/specific-cutting-force.ts';
import { spindleSpeed } from '../../src/mechanics/forces/spindle-speed.ts';
import { tableFeed } from '../../src/mechanics/forces/table-feed.ts';
import { teethInCut } from '../../src/mechanics/forces/teeth-in-cut.ts';
import { expectClose } from '../close-to.ts';

const runs = { seed: 11, numRuns: 300 };
const size = fc.double({ min: 0.01, max: 200, noNaN: true });
const ROUNDING = { percent: 1e-8 };
const cut = { kc11: 1500, mc: 0.22, diameter: 20, teeth: 4, ap: 10, ae: 5, fz: 0.1 };

describe('solved back', () => {
  it('the angle in the cut gives the width again', () => {
    fc.assert(
      fc.property(size, fc.double({ min: 1e-6, max: 1, noNaN: true }), (diameter, share) => {
        const ae = share * diameter;
        const angle = entryAngle(ae, diameter);
        expectClose((diameter / 2) * (1 - Math.cos((angle * Math.PI) / 180)), ae, { percent: 1e-3 });
        const half = (centeredEngagementAngle(ae, diameter) * Math.PI) / 360;
        expectClose(diameter * Math.sin(half), ae, ROUNDING);
      }),
      runs,
    );
  });

  it('the speed gives the cutting speed again, and torque at that speed the power', () => {
    fc.assert(
      fc.property(size, size, size, (vc, diameter, power) => {
        const n = spindleSpeed(vc, diameter);
        expectClose((Math.PI * diameter * n) / 1000, vc, ROUNDING);
        expectClose((cuttingTorque(power, n) * Math.PI * n) / 30_000, power, ROUNDING);
      }),
      runs,
    );
  });

  it('the mean chip is the mean of f·sin φ over the cut, summed up numerically', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 1, noNaN: true }), (share) => {
        const angle = (entryAngle(share * 50, 50) * Math.PI) / 180;
        const steps = 2000;
        let sum = 0;
        for (let index = 0; index < steps; index += 1) sum += Math.sin((angle * (index + 0.5)) / steps);
        // the midpoint rule is off by (π/2000)²/24
        expectClose(meanChipThickness(0.1, share * 50, 50), (0.1 * sum) / steps, { percent: 1e-4 });
      }),
      runs,
    );
  });

  it('the greatest chip is the greatest f·sin φ over the cut', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const angle = (entryAngle(share * 50, 50) * Math.PI) / 180;
        const sines = Array.from({ length: 2001 }, (_, index) => Math.sin((angle * index) / 2000));
        // between two steps the top of the sine hides at most (π/2000)²/8
        expectClose(greatestChipThickness(0.1, share * 50, 50), 0.1 * Math.max(...sines), { absolute: 1e-7 });
      }),
      runs,
    );
  });
});

describe('where one formula takes over from another', () => {
  it('the greatest chip does not jump at 90°', () => {
    const [below, at, above] = [9.9999, 10, 10.0001].map((ae) => greatestChipThickness(0.1, ae, 20));
    expect(at).toBe(0.1);
    expect(above).toBe(0.1);
    expectClose(below ?? Number.NaN, 0.1, { percent: 1e-6 });
  });

  it('the gravity moment does not jump where its worst angle comes into the range', () => {
    const worst = (Math.atan2(3, 4) * 180) / Math.PI;
    const at = (tilt: number): number =>
      worstGravityMoment({ massMoment: 300, eccentricMassMoment: 400, tilt });
    expectClose(at(worst - 1e-6), at(worst), { percent: 1e-9 });
    expect(at(worst + 1e-6)).toBe(at(180));
  });

  it('the gravity moment is the greatest over a fine grid of tilts', () => {
    const moment = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(moment, moment, fc.double({ min: 0, max: 180, noNaN: true }), (a, e, tilt) => {
        const grid = Array.from({ length: 3601 }, (_, index) => (tilt * index * Math.PI) / 3600 / 180);
        const sampled =
          Math.max(...grid.map((t) => a * Math.sin(t) + e * Math.abs(Math.cos(t)))) * 0.00980665;
        const ours = worstGravityMoment({ massMoment: a, eccentricMassMoment: e, tilt });
        expectClose(ours, sampled, { absolute: 1e-4 });
        expect(ours).toBeGreaterThanOrEqual(sampled - 1e-9);
      }),
      runs,
    );
  });

  it('a tooth more counts only where it is really in the cut', () => {
    expect(teethInCut(3, entryAngle(15, 20))).toBe(1);
    expect(teethInCut(3, entryAngle(15.001, 20))).toBe(2);
    expect(teethInCut(4, entryAngle(10, 20))).toBe(1);
    expect(teethInCut(4, entryAngle(20, 20))).toBe(2);
  });

  it('a cut as thin as can be has one tooth in it', () => {
    expect(teethInCut(2, entryAngle(1e-18, 20))).toBe(1);
  });
});

describe('at the limits', () => {
  const { POSITIVE_INFINITY } = Number;

  it('nothing cut takes no force and no power', () => {
    expect(peakTangentialForce({ ...cut, ae: 0 })).toBe(0);
    expect(peakTangentialForce({ ...cut, fz: 0 })).toBe(0);
    expect(cuttingPower(10, 5, 0, POSITIVE_INFINITY)).toBe(0);
    expect(drillThrust({ kc11: 1500, mc: 0.22, diameter: 10, feed: 0 })).toBe(0);
  });

  it('beside a tool without bound the cut is nothing', () => {
    expect(entryAngle(5, POSITIVE_INFINITY)).toBe(0);
    expect(meanChipThickness(0.1, 5, POSITIVE_INFINITY)).toBe(0);
    expect(peakTangentialForce({ ...cut, diameter: POSITIVE_INFINITY })).toBe(0);
  });

  it('a depth without bound takes a force without bound', () => {
    expect(peakTangentialForce({ ...cut, ap: POSITIVE_INFINITY })).toBe(POSITIVE_INFINITY);
  });

  it('the thinnest chip is the hardest to cut, and a material without exponent does not care', () => {
    expect(specificCuttingForce(1500, 0.22, 0)).toBe(POSITIVE_INFINITY);
    expect(specificCuttingForce(750, 0, 0)).toBe(750);
  });

  it('an unknown mass on the axis has an unknown inertia, one beside it adds to that', () => {
    expect(parallelAxis(cylinderInertia(POSITIVE_INFINITY, 10), POSITIVE_INFINITY, 0)).toBe(
      POSITIVE_INFINITY,
    );
    expect(parallelAxis(0.01, 0, POSITIVE_INFINITY)).toBe(0.01);
    expect(blockInertia(0, POSITIVE_INFINITY, 5)).toBe(0);
  });

  it('a moment without bound does not count where its lever does not', () => {
    expect(worstGravityMoment({ massMoment: POSITIVE_INFINITY, eccentricMassMoment: 0, tilt: 0 })).toBe(0);
    expect(worstGravityMoment({ massMoment: POSITIVE_INFINITY, eccentricMassMoment: 0, tilt: 5 })).toBe(
      POSITIVE_INFINITY,
    );
  });
});

describe('more never takes less', () => {
  it('force rises with depth, feed, material, teeth and width', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        share,
        share,
        fc.integer({ min: 1, max: 12 }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (ae, fz, teeth, more) => {
          const base = { ...cut, ae: ae * cut.diameter, fz, teeth };
          const force = peakTangentialForce(base) * (1 - 1e-12);
          expect(peakTangentialForce({ ...base, ap: base.ap * more })).toBeGreaterThanOrEqual(force);
          expect(peakTangentialForce({ ...base, fz: base.fz * more })).toBeGreaterThanOrEqual(force);
          expect(peakTangentialForce({ ...base, kc11: base.kc11 * more })).toBeGreaterThanOrEqual(force);
          expect(peakTangentialForce({ ...base, teeth: base.teeth + 1 })).toBeGreaterThanOrEqual(force);
          const wider = Math.min(base.ae * more, base.diameter);
          expect(peakTangentialForce({ ...base, ae: wider })).toBeGreaterThanOrEqual(force);
        },
      ),
      runs,
    );
  });
});

describe('out of range', () => {
  it.each([
    ['a cut wider than the tool', () => entryAngle(21, 20)],
    ['a centered cut wider than the tool', () => centeredEngagementAngle(21, 20)],
    ['a mean chip of a cut wider than the tool', () => meanChipThickness(0.1, 21, 20, 180)],
    ['a mean chip over no angle', () => meanChipThickness(0.1, 5, 20, 0)],
    ['a mean chip over more than half a turn', () => meanChipThickness(0.1, 5, 20, 181)],
    ['a negative feed', () => greatestChipThickness(-0.1, 5, 20)],
    ['a chip below zero', () => specificCuttingForce(1500, 0.22, -0.1)],
    ['an exponent of one', () => specificCuttingForce(1500, 1, 0.1)],
    ['more than a turn in the cut', () => teethInCut(4, 361)],
    ['a negative number of teeth', () => teethInCut(-1, 90)],
    ['a negative depth', () => peakTangentialForce({ ...cut, ap: -1 })],
    ['a force of no material', () => peakTangentialForce({ ...cut, mc: -0.1 })],
    ['a negative drill', () => drillThrust({ kc11: 1500, mc: 0.22, diameter: -1, feed: 0.2 })],
    ['a drill in no material', () => drillThrust({ kc11: -1, mc: 0.22, diameter: 1, feed: 0.2 })],
    ['a negative cutting speed', () => spindleSpeed(-1, 20)],
    ['a negative number of teeth to feed', () => tableFeed(0.1, -1, 1000)],
    ['a negative width to remove', () => removalRate(1, -1, 100)],
    ['a negative feed rate', () => cuttingPower(1, 1, -100, 1500)],
    ['a negative power', () => cuttingTorque(-1, 1000)],
    [
      'a mass moment with a sign',
      () => worstGravityMoment({ massMoment: -1, eccentricMassMoment: 0, tilt: 90 }),
    ],
    [
      'a tilt past half a turn',
      () => worstGravityMoment({ massMoment: 1, eccentricMassMoment: 0, tilt: 181 }),
    ],
    ['a negative mass', () => cylinderInertia(-1, 10)],
    ['a negative side', () => blockInertia(1, -1, 10)],
    ['a negative distance', () => parallelAxis(0, 1, -1)],
    ['a bore wider than the ring', () => hollowCylinderInertia({ mass: 1, outer: 10, inner: 11 })],
  ])('%s is refused', (_what, call) => {
    expect(call).toThrow(RangeError);
  });
});
