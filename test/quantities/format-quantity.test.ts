import { describe, expect, test } from 'vitest';
import { formatNumber } from '../../src/quantities/format-number.ts';
import { formatInterval, formatQuantity } from '../../src/quantities/format-quantity.ts';

const beside = { shownIn: 'inch', beside: true } as const;

describe('a quantity in words', () => {
  test.each<[number, string, string, string]>([
    [88.9, 'mm', '88.9 mm', '88.9 mm (3.5 in)'],
    [402.137, 'mm', '402.1 mm', '402.1 mm (15.83 in)'],
    [1234.56, 'mm', '1234.6 mm', '1234.6 mm (48.6 in)'],
    [0.0127, 'mm', '0.0127 mm', '0.0127 mm (0.0005 in)'],
    [0, 'mm', '0 mm', '0 mm (0 in)'],
    [113.3980925, 'kg', '113.4 kg', '113.4 kg (250 lb)'],
    [24.40472307, 'N·m', '24.4 N·m', '24.4 N·m (18 lbf·ft)'],
    [0.93, 'share', '93 %', '93 %'],
    [0.0655, 'share', '6.6 %', '6.6 %'],
    [28500, 'money', '28500', '28500'],
    [35, '°', '35°', '35°'],
    [15, 'arcsec', '15 arcsec', '15 arcsec'],
    [3, '', '3', '3'],
    [7, 'furlong', '7 furlong', '7 furlong'],
  ])('%d %s', (value, unit, metric, both) => {
    expect(formatQuantity(value, unit)).toBe(metric);
    expect(formatQuantity(value, unit, beside)).toBe(both);
  });

  test('inches alone where nobody asks for both', () => {
    expect(formatQuantity(88.9, 'mm', { shownIn: 'inch' })).toBe('3.5 in');
  });

  test('money with its currency, thousands set apart', () => {
    expect(formatQuantity(1234567, 'money', { grouped: 'plain', currency: 'EUR' })).toBe('1 234 567 EUR');
    expect(formatQuantity(28500, 'money', { grouped: 'thin' })).toBe('28\u202f500');
    expect(formatQuantity(9500, 'money', { grouped: 'plain' })).toBe('9500');
  });

  test('never an exponent, never a minus before nothing', () => {
    expect(formatNumber(1e22, 0)).toBe('10000000000000000000000');
    expect(formatNumber(1e-9, 3)).toBe('0');
    expect(formatNumber(-1e-9, 3)).toBe('0');
    expect(formatNumber(-0, 3)).toBe('0');
    expect(formatNumber(-12.5, 3)).toBe('-12.5');
  });

  test('what is no number does not pass for one', () => {
    expect(formatNumber(Number.NaN, 1)).toBe('not known');
    expect(formatNumber(Number.POSITIVE_INFINITY, 1)).toBe('no limit');
    expect(formatNumber(Number.NEGATIVE_INFINITY, 1)).toBe('no lower limit');
  });
});

describe('an interval in words', () => {
  test('two ends, one, or none', () => {
    expect(formatInterval({ low: 50.8, high: 76.2 }, 'mm', beside)).toBe('50.8 to 76.2 mm (2 to 3 in)');
    expect(formatInterval({ low: 5, high: 5 }, 'kg')).toBe('5 kg');
    expect(formatInterval({ low: 2, high: Number.POSITIVE_INFINITY }, 'kg')).toBe('at least 2 kg');
    expect(formatInterval({ low: Number.NEGATIVE_INFINITY, high: 3 }, 'kg')).toBe('at most 3 kg');
    expect(formatInterval({ low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }, 'kg')).toBe(
      'no limit known',
    );
  });

  test('ends that read the same are written once', () => {
    expect(formatInterval({ low: 402.11, high: 402.13 }, 'mm')).toBe('402.1 mm');
  });
});
