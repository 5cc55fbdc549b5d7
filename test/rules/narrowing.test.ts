import { describe, expect, test } from 'vitest';
import { howLikelyKnown } from '../../src/rules/asking/how-likely-known.ts';
import { narrowings } from '../../src/rules/asking/narrowing.ts';
import { standingOf } from '../../src/rules/standing.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from './example-shop.ts';

const told = (change: Parameters<typeof standingOf>[0]) => narrowings(standingOf(change, EXAMPLE_CATALOG));

describe('what asking for an answer is expected to do', () => {
  test('nothing is asked where everything is known', () => {
    expect(told(EXAMPLE_ANSWERS).filter(({ drops }) => drops > 0.05)).toEqual([]);
  });

  test('the wider the range below what is needed, the more it is expected to drop', () => {
    const withDoor = (width: readonly [number, number]) =>
      told({
        ...EXAMPLE_ANSWERS,
        shop: { ...EXAMPLE_ANSWERS.shop, doorway: { ...EXAMPLE_ANSWERS.shop.doorway, width } },
      }).find(({ answer }) => answer === 'shop.doorway.width');
    // two arrangements with one machine that wants 2100 mm: nearly all of the first range is enough, a tenth of the second
    const [likely, unlikely] = [withDoor([2000, 9000]), withDoor([1200, 2200])];
    expect([likely?.touches, unlikely?.touches]).toEqual([2, 2]);
    expect(Number(likely?.drops)).toBeGreaterThan(0);
    expect(Number(unlikely?.drops)).toBeGreaterThan(5 * Number(likely?.drops));
    // a doorway that is surely wide enough or surely too narrow is no question
    expect(withDoor([8000, 9000])).toBeUndefined();
    expect(withDoor([900, 1000])).toBeUndefined();
  });

  test('what somebody seldom knows counts for less', () => {
    expect(howLikelyKnown('shop.floorRating')).toBeLessThan(howLikelyKnown('shop.doorway.width'));
    expect(howLikelyKnown('parts[A].cut.fz')).toBeLessThan(howLikelyKnown('parts[A].size[0]'));
  });
});
