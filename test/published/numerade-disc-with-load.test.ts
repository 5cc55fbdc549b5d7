/**
 * A problem on numerade.com: a disc of 125 kg and 2.1 m radius that carries 34 kg at its rim.
 * The statement is PRINTED, the values are DERIVED.
 */
import { describe, it } from 'vitest';
import { cylinderInertia, parallelAxis } from '../../src/mechanics/forces/inertia.ts';
import { expectClose } from '../close-to.ts';

const WORKED = { percent: 0.01 };

describe('disc with a load at the rim (J-4)', () => {
  it('the disc alone has 275.625 kg·m²', () => {
    expectClose(cylinderInertia(125, 2100), 275.625, WORKED);
  });

  it('the load adds 149.94 kg·m²', () => {
    expectClose(parallelAxis(0, 34, 2100), 149.94, WORKED);
  });

  it('both have 425.565 kg·m², and 10 N at the rim turn them at 0.049346 rad/s²', () => {
    const all = cylinderInertia(125, 2100) + parallelAxis(0, 34, 2100);
    expectClose(all, 425.565, WORKED);
    expectClose((10 * 2.1) / all, 0.049346, WORKED);
  });
});
