import { expect, test } from 'vitest';
import type { Figure } from '../../bench/figure.ts';
import { slopeOf } from '../../bench/market/slope.ts';
import { table } from '../../bench/table.ts';

test('an exponent is the slope through the logarithms', () => {
  const points = (exponent: number) => [2, 4, 8, 16].map((size) => ({ size, time: 7 * size ** exponent }));
  for (const exponent of [0, 0.5, 1, 1.05, 2]) expect(slopeOf(points(exponent))).toBeCloseTo(exponent, 9);
  // one time too long at the end pulls it up, by what least squares gives it
  expect(slopeOf([1, 2, 4].map((size) => ({ size, time: size === 4 ? 8 : size })))).toBeCloseTo(1.5, 9);
  expect(() => slopeOf([{ size: 1, time: 1 }])).toThrow('A line needs two points');
});

test('a promise is held against the figure from below, from above, or both', () => {
  const figure = (value: number | null, atLeast: number | null, atMost: number | null): Figure => ({
    ...{ requirement: null, what: 'ratio', value, unit: '×', atMost, beside: '' },
    ...(atLeast === null ? {} : { atLeast }),
  });
  const cells = (row: Figure) => (table([row]).split('\n')[2] ?? '').split('|').map((cell) => cell.trim());
  expect(cells(figure(300, 300, null)).slice(3, 6)).toEqual(['300 ×', '≥ 300 ×', 'met']);
  expect(cells(figure(299, 300, null))[5]).toBe('NOT MET');
  expect(cells(figure(8, 3, 12)).slice(3, 6)).toEqual(['8.00 ×', '3.00 × to 12.00 ×', 'met']);
  expect(cells(figure(2.9, 3, 12))[5]).toBe('NOT MET');
  expect(cells(figure(12.1, 3, 12))[5]).toBe('NOT MET');
  expect(cells(figure(1.1, null, 1.2)).slice(3, 6)).toEqual(['1.10 ×', '≤ 1.20 ×', 'met']);
  expect(cells(figure(1.3, null, null)).slice(4, 6)).toEqual(['', '']);
  expect(cells(figure(null, 3, null)).slice(3, 6)).toEqual(['not measured', '≥ 3.00 ×', '']);
});
