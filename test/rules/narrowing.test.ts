import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/questions/answers.ts';
import { askingOf, type DecidingAnswer } from '../../src/rules/asking/asking.ts';
import { howLikelyKnown } from '../../src/rules/asking/how-likely-known.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from './example-shop.ts';

const told = (answers: Answers): readonly DecidingAnswer[] => askingOf(answers, EXAMPLE_CATALOG).answers;

describe('what asking for an answer is expected to do', () => {
  test('nothing is asked where everything is known', () => {
    expect(told(EXAMPLE_ANSWERS)).toEqual([]);
  });

  test('the wider the range below what is needed, the more it is expected to drop', () => {
    const withDoor = (width: readonly [number, number]) =>
      told({
        ...EXAMPLE_ANSWERS,
        shop: { ...EXAMPLE_ANSWERS.shop, doorway: { ...EXAMPLE_ANSWERS.shop.doorway, width } },
      }).find(({ answer }) => answer === 'shop.doorway.width');
    // two arrangements with one machine that wants 2100 mm: nearly all of the first range is enough, a tenth of the second
    const [likely, unlikely] = [withDoor([2000, 4000]), withDoor([1500, 2200])];
    expect([likely?.touches, unlikely?.touches]).toEqual([2, 2]);
    expect(Number(likely?.drops)).toBeGreaterThan(0);
    expect(Number(unlikely?.drops)).toBeGreaterThan(2 * Number(likely?.drops));
    // a doorway that is surely wide enough or surely too narrow is no question
    expect(withDoor([8000, 9000])).toBeUndefined();
    expect(withDoor([900, 1000])).toBeUndefined();
  });

  test('what somebody seldom knows counts for less', () => {
    expect(howLikelyKnown('shop.floorRating')).toBeLessThan(howLikelyKnown('shop.doorway.width'));
    expect(howLikelyKnown('parts[A].cut.fz')).toBeLessThan(howLikelyKnown('parts[A].size[0]'));
  });
});
