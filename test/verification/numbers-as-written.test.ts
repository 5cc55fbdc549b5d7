import { describe, expect, test } from 'vitest';
import { readAsWritten, sameDecimal, writtenNumber } from '../../src/verification/numbers-as-written.ts';

test('numbers are kept as they are written, digits in texts are left alone', () => {
  const read = readAsWritten('{"a":1.50,"b":["2 of 3",-4e-7],"c":"say \\"5\\""}') as Record<string, unknown>;
  expect(writtenNumber(read.a)).toBe('1.50');
  expect(read.b).toEqual(['2 of 3', '\u0000-4e-7']);
  expect(read.c).toBe('say "5"');
  expect(writtenNumber(read.c)).toBeUndefined();
});

test('what is no JSON is refused', () => {
  expect(() => readAsWritten('{"a":')).toThrow(SyntaxError);
});

describe('two decimals', () => {
  test.each([
    ['1.50', '15e-1'],
    ['1', '1.0'],
    ['0', '-0.00'],
    ['1200', '1.2e3'],
    ['0.0012', '12e-4'],
  ])('%s and %s are the same', (one, other) => {
    expect(sameDecimal(one, other)).toBe(true);
  });

  test.each([
    ['1.5', '1.6'],
    ['12', '1.2'],
    ['5', '-5'],
    // one number to a computer
    ['0.30000000000000004', '0.30000000000000005'],
  ])('%s and %s are not', (one, other) => {
    expect(sameDecimal(one, other)).toBe(false);
  });
});
