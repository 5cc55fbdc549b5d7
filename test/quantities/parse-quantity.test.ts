import { describe, expect, test } from 'vitest';
import { describeFault } from '../../src/quantities/describe-fault.ts';
import type { QuantityKind } from '../../src/quantities/kinds.ts';
import { parseQuantity, quantityFromNumber } from '../../src/quantities/parse-quantity.ts';

const length = (text: string, units: 'mm' | 'inch' = 'mm') => parseQuantity(text, { kind: 'length', units });

function baseValue(kind: QuantityKind, text: string, units: 'mm' | 'inch' = 'mm'): number {
  const read = parseQuantity(text, { kind, units });
  if (!read.ok) throw new Error(JSON.stringify(read.fault));
  return read.value;
}

describe('requirement 15: a length is read as people write it', () => {
  test.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['12.5mm', 12.5],
    ['12,5 mm', 12.5],
    ['88,9 mm', 88.9],
    ['.5', 0.5],
    ['5. mm', 5],
    ['+3', 3],
    ['-3', -3],
    ['−3', -3],
    ['1e3', 1000],
    ['1.5E-2 m', 15],
    ['1 500 mm', 1500],
    ['1\u202f500', 1500],
    ['1\u00a0500', 1500],
    ["1'500", 1500],
    ['1.500,25', 1500.25],
    ['1,500.25', 1500.25],
    ['1 500,250', 1500.25],
    ['1,500,000', 1500000],
    ['1.500.000', 1500000],
    ['0,125', 0.125],
    ['1234,567', 1234.567],
    ['1/2 in', 12.7],
    ['1 1/2"', 38.1],
    ['3 1/2 in', 88.9],
    ['3-1/2"', 88.9],
    ['3½ in', 88.9],
    ['3⁄8 in', 9.525],
    ['-1/2 in', -12.7],
    ['3.5 ft', 1066.8],
    ['5\' 3"', 1600.2],
    ['5\'3 1/2"', 1612.9],
    ['5 ft 3 in', 1600.2],
    ["1'500 in", 38100],
    ['12″', 304.8],
    ['25 µm', 0.025],
    ['25 μm', 0.025],
    ['5 thou', 0.127],
    ['2.5 cm', 25],
    ['1.2 M', 1200],
  ])('%s is %d mm', (text, expected) => {
    expect(length(text)).toMatchObject({ ok: true, value: expected });
  });

  test('a bare number is in the units of the file', () => {
    expect(length('3.5', 'inch')).toMatchObject({ ok: true, value: 88.9, unit: 'in', bare: true });
    expect(length('3.5', 'mm')).toMatchObject({ ok: true, value: 3.5, unit: 'mm', bare: true });
    expect(quantityFromNumber(3.5, { kind: 'length', units: 'inch' })).toMatchObject({ value: 88.9 });
  });
});

describe('other kinds have their own units', () => {
  test.each<[QuantityKind, string, number]>([
    ['mass', '1.2 t', 1200],
    ['mass', '250 lb', 113.3980925],
    ['mass', '250 lbs.', 113.3980925],
    ['mass', '800 g', 0.8],
    ['torque', '18 N·m', 18],
    ['torque', '18 Nm', 18],
    ['torque', '18 N⋅m', 18],
    ['torque', '18 lbf·ft', 24.40472307],
    ['torque', '18 ft-lb', 24.40472307],
    ['accuracy', '15 arcsec', 15],
    ['accuracy', '15"', 15],
    ['accuracy', "1'", 60],
    ['accuracy', '0.01°', 36],
    ['rotation', '80 rpm', 80],
    ['rotation', '80 1/min', 80],
    ['rotation', '80 min⁻¹', 80],
    ['pressure', '6 bar', 6],
    ['pressure', '600 kPa', 6],
    ['share', '40 %', 0.4],
    ['share', '0.4', 0.4],
    ['money', '28 500', 28500],
    ['inertia', '0.12 kg·m²', 0.12],
    ['inertia', '1200 kg cm^2', 0.12],
    ['acceleration', '4 m/s²', 4],
    ['angle', '35°', 35],
    ['angle', '-20 deg', -20],
    ['minutes', '1.5 h', 90],
    ['minutes', '90 s', 1.5],
    ['feed', '80 in/min', 2032],
    ['apparentPower', '40 kVA', 40],
    ['count', '3', 3],
  ])('%s %s is %d', (kind, text, expected) => {
    expect(baseValue(kind, text)).toBe(expected);
  });

  test('in a file in inches lengths, masses, feeds and cutting speeds follow, and nothing else', () => {
    expect(baseValue('mass', '250', 'inch')).toBe(113.3980925);
    expect(baseValue('feedPerTooth', '0.004', 'inch')).toBe(0.1016);
    expect(baseValue('feedPerTurn', '0.01', 'inch')).toBe(0.254);
    expect(baseValue('feed', '80', 'inch')).toBe(2032);
    expect(baseValue('cuttingSpeed', '500', 'inch')).toBe(152.4);
    for (const kind of ['power', 'acceleration', 'torque', 'pressure'] as const) {
      expect(baseValue(kind, '7', 'inch')).toBe(7);
    }
  });
});

test('what was written in inches and in millimeters becomes the identical number', () => {
  expect(baseValue('length', '3.5 in')).toBe(baseValue('length', '88.9 mm'));
  for (let sixteenths = 1; sixteenths < 400; sixteenths++) {
    expect(baseValue('length', `${sixteenths}/16 in`)).toBe(
      baseValue('length', `${(sixteenths * 15875) / 10000} mm`),
    );
  }
});

describe('requirement 15: what cannot be read is refused with its reason', () => {
  test.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['abc', 'not-a-number'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['1 2', 'not-a-number'],
    ['12.5.2', 'not-a-number'],
    ['1,5/2', 'not-a-number'],
    ['3 5/4', 'not-a-number'],
    ['5 -3 mm', 'not-a-number'],
    ['--5', 'not-a-number'],
    ['٣', 'not-a-number'],
    ['1_000', 'not-a-number'],
    [`${'9'.repeat(200)} mm`, 'not-a-number'],
    ['1e400', 'not-finite'],
    ['1/0', 'division-by-zero'],
    ['1,500', 'ambiguous'],
    ['12,500 in', 'ambiguous'],
    ['12 furlong', 'unknown-unit'],
    ['12 kg', 'unknown-unit'],
  ])('"%s": %s', (text, code) => {
    const read = length(text);
    expect(read.ok ? 'read' : read.fault.code).toBe(code);
  });

  test('both readings of an ambiguous number are named', () => {
    const read = length('1,500 mm');
    if (read.ok) throw new Error('it was read');
    expect(describeFault(read.fault)).toEqual({
      found: '"1,500 mm" can be 1500 mm or 1.5 mm',
      expected: 'write 1500 mm or 1.5 mm',
    });
  });

  test('an unknown unit names the ones there are, and the near one', () => {
    const read = parseQuantity('3 lbz', { kind: 'mass', units: 'mm' });
    if (read.ok) throw new Error('it was read');
    expect(describeFault(read.fault)).toEqual({
      found: '"lbz" is no unit of mass',
      expected: 'expected a mass in kg, g, t or lb',
      didYouMean: 'lb',
    });
  });

  test('limits are kept, and only the broken one is named', () => {
    const above = { kind: 'length', units: 'mm', limits: { above: 0, most: 5000 } } as const;
    for (const [text, expected] of [
      ['0', 'expected more than 0 mm'],
      ['-1', 'expected more than 0 mm'],
      ['6 m', 'expected at most 5000 mm'],
    ] as const) {
      const read = parseQuantity(text, above);
      expect(read.ok ? '' : describeFault(read.fault).expected).toBe(expected);
    }
    const whole = parseQuantity('2.5', { kind: 'count', units: 'mm', limits: { whole: true } });
    expect(whole.ok ? '' : describeFault(whole.fault).expected).toBe('expected a whole number');
    expect(quantityFromNumber(Number.NaN, above).ok).toBe(false);
  });
});
