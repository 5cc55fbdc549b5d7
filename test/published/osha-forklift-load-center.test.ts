/** OSHA eTool on powered industrial trucks, as reprinted in training texts (REPRINT). Prints cut off, not rounded. */
import { expect, it } from 'vitest';
import { forkliftCapacity, loadCenter } from '../../src/mechanics/lifting/forklift-capacity.ts';
import { expectClose } from '../close-to.ts';

const at = (rated: number, center: number): number => forkliftCapacity({ rated, ratedCenter: 24, center });

it('F-1: 5000 lb at 24 in are 4285 lb at 28 in', () => expectClose(at(5000, 28), 4285, { absolute: 1 }));
it('F-2: 4000 lb at 24 in are 2666 lb at 36 in', () => expectClose(at(4000, 36), 2666, { absolute: 1 }));
it('F-4: the load moment stays, 120000 in-lb', () => {
  expectClose(at(5000, 28) * 28, 120000, { absolute: 1e-6 });
  expectClose(at(5000, 40) * 40, 120000, { absolute: 1e-6 });
});
it('F-5: a nearer load gains nothing', () => expect(at(5000, 20)).toBe(5000));
it('F-6: a load alike all along sits at half its length, 30 in of 60', () => expect(loadCenter(60)).toBe(30));
