/**
 * A question on jiskha.com (66998): a ball of 0.85 kg on a light rod of 1 m, 25° from the vertical.
 * PRINTED: 3.59 N·m, with g taken as 10 m/s².
 */
import { describe, it } from 'vitest';
import { worstGravityMoment } from '../../src/mechanics/forces/gravity-moment.ts';
import { expectClose } from '../close-to.ts';

describe('ball on a rod, 25° from the vertical', () => {
  it('has a moment of 3.59 N·m with g = 10', () => {
    const moment = worstGravityMoment({
      massMoment: 0.85 * 1000,
      eccentricMassMoment: 0,
      tilt: 25,
    });
    // 3.592 printed with three digits
    expectClose((moment * 10) / 9.80665, 3.59, { absolute: 0.005 });
  });
});
