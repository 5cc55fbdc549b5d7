import { describe, expect, test } from 'vitest';
import { looksLikeRange, parseRange } from '../../src/quantities/parse-range.ts';

const range = (text: string) => {
  const read = parseRange(text, { kind: 'length', units: 'mm' });
  return read.ok ? [read.low.value, read.high.value] : read.fault.code;
};

describe('a range', () => {
  test.each([
    ['2..3 in', [50.8, 76.2]],
    ['2 … 3 in', [50.8, 76.2]],
    ['2 to 3 in', [50.8, 76.2]],
    ['2 - 3 in', [50.8, 76.2]],
    ['2 in to 3', [50.8, 76.2]],
    ['2 in to 80 mm', [50.8, 80]],
    ['1 1/2 to 2 1/2 in', [38.1, 63.5]],
    ['12.5..13', [12.5, 13]],
    ['5..5', [5, 5]],
  ])('%s', (text, ends) => {
    expect(looksLikeRange(text)).toBe(true);
    expect(range(text)).toEqual(ends);
  });

  test('of one number, of three, or with an end that is none is refused', () => {
    expect(range('5')).toBe('not-a-number');
    expect(range('1..2..3')).toBe('not-a-number');
    expect(range('1..x')).toBe('not-a-number');
    expect(range('..5')).toBe('empty');
  });

  test('the wrong way round is refused', () => {
    expect(range('3..2 in')).toBe('wrong-way-round');
    expect(range('1 in..20 mm')).toBe('wrong-way-round');
  });

  test.each(['3-1/2 in', '-5', '12.5', '1 500'])('%s does not look like one', (text) => {
    expect(looksLikeRange(text)).toBe(false);
  });
});
