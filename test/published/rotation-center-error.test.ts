/**
 * Error of the known center of rotation: the effect of wrong pivot parameters between post-processor and
 * control, doi 10.1177/09544054211019668 (its abstract is PRINTED, without numbers). Values DERIVED from the
 * chord of a circle; the budget is the root of the sum of squares.
 */
import { describe, it } from 'vitest';
import { centerError } from '../../src/mechanics/contouring/center-error.ts';
import { errorBudget } from '../../src/mechanics/contouring/error-budget.ts';
import { expectClose } from '../close-to.ts';

/** Five digits. */
const WORKED = { absolute: 0.00005 };

describe('error of the known center, µm', () => {
  it.each([
    [5, 180, 10],
    [5, 90, 7.0711],
    [8, 60, 8],
    [10, 30, 5.1764],
    [10, 10, 1.7431],
    [10, 0, 0],
  ])('%f µm and a turn of %f° make %f µm', (error, turn, expected) => {
    expectClose(centerError(error, turn), expected, WORKED);
  });
});

describe('error budget, µm', () => {
  it('12.12, 5, 8 and 7.07 come to 16.908', () => {
    expectClose(errorBudget([12.12, 5, 8, 7.07]), 16.908, { absolute: 0.0005 });
  });

  it('ten errors of 0.1 come to 0.316', () => {
    expectClose(errorBudget(Array.from({ length: 10 }, () => 0.1)), 0.3162, WORKED);
  });
});
