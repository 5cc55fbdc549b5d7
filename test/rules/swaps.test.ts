import { describe, expect, test } from 'vitest';
import type { Answers } from '../../src/questions/answers.ts';
import { shopCase } from '../../src/rules/facts/shop-facts.ts';
import { swapHoursOf, swapsOf } from '../../src/rules/weighing/swaps.ts';
import { EXAMPLE_ANSWERS } from './example-shop.ts';

const shopOf = (work: Partial<Answers['work']>, assume: Answers['assume'] = {}) =>
  shopCase({ ...EXAMPLE_ANSWERS, assume, work: { ...EXAMPLE_ANSWERS.work, ...work } });

const exactly = (stations: number) => ({ low: stations, high: stations });

/** Lifts a year and their hours. */
function yearOf(
  work: Partial<Answers['work']>,
  stations: number | readonly [number, number],
  builtIn = false,
) {
  const shop = shopOf(work);
  const there = typeof stations === 'number' ? exactly(stations) : { low: stations[0], high: stations[1] };
  const swaps = swapsOf(shop, builtIn, there);
  const hours = swapHoursOf(shop, swaps);
  return {
    swaps: [swaps.low, swaps.high],
    hours: [hours.low, hours.high],
    gaps: swaps.gaps.map(({ path }) => path),
  };
}

describe('swaps a year', () => {
  const work = { switchesPerWeek: 3, visesWanted: 2, swap: 'keyed' } as const;

  test('three switches a week in forty-eight weeks, an hour each', () => {
    expect(yearOf(work, 1)).toEqual({ swaps: [144, 144], hours: [144, 144], gaps: [] });
  });

  test('take as long as the way in which the rotary is put back', () => {
    expect(yearOf({ ...work, swap: 'zero-point' }, 1).hours).toEqual([60, 60]);
    expect(yearOf({ ...work, swap: 'trammed' }, 1).hours).toEqual([288, 288]);
    expect(yearOf({ ...work, swap: 'unknown' }, 1).hours).toEqual([60, 288]);
  });

  test('are none where the vises find room beside it, or none is wanted, or nobody switches', () => {
    for (const none of [
      yearOf(work, 2),
      yearOf({ ...work, visesWanted: 0 }, 0),
      yearOf({ ...work, switchesPerWeek: 0 }, 0),
    ])
      expect(none.hours).toEqual([0, 0]);
  });

  test('are none on a table that is built in', () => {
    expect(yearOf(work, 0, true).swaps).toEqual([0, 0]);
  });

  test('are perhaps none where it is not sure how many vises stand beside it', () => {
    expect(yearOf(work, [1, 2]).swaps).toEqual([0, 144]);
  });

  test('hang on what nobody knows', () => {
    expect(yearOf({ ...work, switchesPerWeek: [1, 4] }, 1)).toMatchObject({
      swaps: [48, 192],
      gaps: ['work.switchesPerWeek'],
    });
    const wanted = yearOf({ ...work, visesWanted: 'unknown' }, 1);
    expect(wanted).toMatchObject({ swaps: [0, 144], gaps: ['work.visesWanted'] });
  });

  test('follow the assumptions', () => {
    const shop = shopOf(work, { weeks: 40, swapMinutes: { keyed: 30 } });
    expect(swapHoursOf(shop, swapsOf(shop, false, exactly(0)))).toEqual({ low: 60, high: 60 });
  });
});
