import { describe, expect, test } from 'vitest';
import type { Part } from '../../../src/questions/answers.ts';
import { setupsOnRotary } from '../../../src/rules/money/setups-on-rotary.ts';
import { EXAMPLE_PART } from '../example-shop.ts';

const setups = (change: Partial<Part>, axes: 1 | 2) => {
  const { low, high, gaps } = setupsOnRotary({ ...EXAMPLE_PART, ...change }, axes);
  return [low, high, ...gaps.map(({ path }) => path)];
};

describe('setups on a rotary', () => {
  test('that tilts: top and sides in one, the bottom in one more', () => {
    expect(setups({ approaches: ['top', 'sides'], bottom: false }, 2)).toEqual([1, 1]);
    expect(setups({ approaches: ['top', { slant: 30 }], bottom: true }, 2)).toEqual([2, 2]);
  });

  test('with a single axis: the sides in one, each end that is cut in one more', () => {
    expect(setups({ approaches: ['around'], bottom: false }, 1)).toEqual([1, 1]);
    expect(setups({ approaches: ['around'], bottom: true }, 1)).toEqual([2, 2]);
    expect(setups({ approaches: ['top', 'sides'], bottom: true }, 1)).toEqual([3, 3]);
  });

  test('hang on what is not known', () => {
    expect(setups({ bottom: 'unknown' }, 2)).toEqual([1, 2, 'parts[Example].bottom']);
    expect(setups({ approaches: 'unknown', bottom: true }, 1)).toEqual([2, 3, 'parts[Example].approaches']);
    expect(setups({ approaches: 'unknown', bottom: true }, 2)).toEqual([2, 2]);
  });
});
