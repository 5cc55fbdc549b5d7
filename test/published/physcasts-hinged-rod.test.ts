/**
 * W. Rowlands, PhysCasts: "Torque on a hinged rod": a uniform rod of 1.5 m and 0.80 kg, hinged at one end,
 * 60° above the horizontal. The statement is PRINTED (doer.col.org 123456789/6495), the answer is DERIVED.
 */
import { describe, it } from 'vitest';
import { worstGravityMoment } from '../../src/mechanics/forces/gravity-moment.ts';
import { expectClose } from '../close-to.ts';

/** m·g·(L/2)·cos 60°, five digits. */
const WORKED = { percent: 0.01 };
const massMoment = 0.8 * 750;

describe('hinged rod', () => {
  it('60° above the horizontal has a moment of 2.942 N·m', () => {
    expectClose(worstGravityMoment({ massMoment, eccentricMassMoment: 0, tilt: 30 }), 2.942, WORKED);
  });

  it('level has a moment of 5.884 N·m', () => {
    expectClose(worstGravityMoment({ massMoment, eccentricMassMoment: 0, tilt: 90 }), 5.884, WORKED);
  });

  it('held upright beside the axis, level with it, has the same moment at any tilt', () => {
    expectClose(
      worstGravityMoment({
        massMoment: 0,
        eccentricMassMoment: massMoment,
        tilt: 45,
      }),
      5.884,
      WORKED,
    );
  });
});
