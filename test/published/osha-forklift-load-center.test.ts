/**
 * OSHA eTool on powered industrial trucks, as reprinted in training texts (REPRINT). It cuts its pounds off and does
 * not round them. The form that is measured from the front axle has no formula here: it takes less off (from
 * memory, ANSI/ITSDF B56.1), and needs a distance that no seller's sheet of ours holds.
 */
import { expect, it } from 'vitest';
import { forkliftCapacity, loadCenter } from '../../src/mechanics/lifting/forklift-capacity.ts';
import { expectClose } from '../close-to.ts';

const at = (rated: number, center: number): number => forkliftCapacity({ rated, ratedCenter: 24, center });

it.each([
  ['F-1', 5000, 28, 4285, 4285.71],
  ['F-2', 4000, 36, 2666, 2666.67],
])(
  '%s: %d lb at 24 in with the load at %d in are %d lb (REPRINT, cut off)',
  (_id, rated, center, printed, unrounded) => {
    expect(Math.floor(at(rated, center))).toBe(printed);
    expectClose(at(rated, center), unrounded, { absolute: 0.005 });
  },
);
it('F-4: the load moment stays, 120 000 in-lb (REPRINT)', () => {
  expectClose(at(5000, 28) * 28, 120_000, { absolute: 1e-6 });
  expectClose(at(5000, 40) * 40, 120_000, { absolute: 1e-6 });
});
it('F-5: 5000 lb at 24 in stay 5000 lb at 20 in, a nearer load gains nothing (rule)', () =>
  expect(at(5000, 20)).toBe(5000));
it('F-6: a load alike all along sits at half its length, 30 in of 60 (REPRINT)', () =>
  expect(loadCenter(60)).toBe(30));
