/**
 * R. D. Knight, Physics for Scientists and Engineers, 3rd ed., ch. 12, problem 53: a disc of 2.0 kg and
 * 10 cm radius, about its center and about its edge. PRINTED (worked answer on gradesaver.com).
 */
import { describe, it } from 'vitest';
import { cylinderInertia, parallelAxis } from '../../src/mechanics/forces/inertia.ts';
import { expectClose } from '../close-to.ts';

const EXACT = { percent: 1e-9 };

describe('Knight, ch. 12, problem 53 (J-1)', () => {
  it('about the center the disc has 0.010 kg·m²', () => {
    expectClose(cylinderInertia(2, 100), 0.01, EXACT);
  });

  it('about its edge the disc has 0.030 kg·m²', () => {
    expectClose(parallelAxis(cylinderInertia(2, 100), 2, 100), 0.03, EXACT);
  });
});
