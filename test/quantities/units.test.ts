import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { BASE_UNITS, type QuantityKind } from '../../src/quantities/kinds.ts';
import { bareUnit, UNITS, unitKey, unitNamed } from '../../src/quantities/units.ts';
import { expectClose } from '../close-to.ts';

const factorOf = (kind: QuantityKind, symbol: string): number => {
  const found = UNITS[kind].find((each) => each.symbol === symbol);
  if (found === undefined) throw new Error(`${symbol} is no unit of ${kind}`);
  return found.factor;
};

describe('factors agree with a general-purpose library of units', () => {
  test.each<[QuantityKind, string, string, string]>([
    ['length', 'in', 'inch', 'mm'],
    ['length', 'ft', 'ft', 'mm'],
    ['length', 'µm', 'um', 'mm'],
    ['length', 'thou', 'mil', 'mm'],
    ['mass', 'lb', 'lb', 'kg'],
    ['mass', 't', 'tonne', 'kg'],
    ['torque', 'lbf·ft', 'lbf ft', 'N m'],
    ['torque', 'lbf·in', 'lbf in', 'N m'],
    ['angle', 'rad', 'rad', 'deg'],
    ['accuracy', 'arcmin', 'arcmin', 'arcsec'],
    ['accuracy', '°', 'deg', 'arcsec'],
    ['pressure', 'psi', 'psi', 'bar'],
    ['pressure', 'MPa', 'MPa', 'bar'],
    ['airFlow', 'cfm', 'ft^3/minute', 'L/minute'],
    ['airFlow', 'm³/h', 'm^3/hour', 'L/minute'],
    ['cuttingSpeed', 'ft/min', 'ft/minute', 'm/minute'],
    ['feed', 'in/min', 'inch/minute', 'mm/minute'],
    ['acceleration', 'in/s²', 'inch/s^2', 'm/s^2'],
    ['acceleration', 'ft/s²', 'ft/s^2', 'm/s^2'],
    ['minutes', 'h', 'hour', 'minute'],
    ['floorLoad', 'psf', 'lbf/ft^2', 'kPa'],
    ['inertia', 'lb·ft²', 'lb ft^2', 'kg m^2'],
    ['inertia', 'lb·in²', 'lb in^2', 'kg m^2'],
    ['rotation', '°/s', 'deg/s', 'cycle/minute'],
  ])('%s: %s', (kind, symbol, theirs, base) => {
    // 1e-5: the library itself has the lb-force and psi to six digits only
    expectClose(factorOf(kind, symbol), mathUnit(1, theirs).toNumber(base), { percent: 1e-3 });
  });
});

describe('factors are exact', () => {
  test.each<[QuantityKind, string, number]>([
    ['mass', 'lb', 0.45359237],
    ['length', 'in', 25.4],
    ['torque', 'lbf·ft', 1.3558179483314],
    ['acceleration', 'g', 9.80665],
    ['airFlow', 'cfm', 28.316846592],
    ['power', 'hp', 0.7456998715822702],
    ['pressure', 'psi', 0.0689475729316836],
    ['floorLoad', 'psf', 0.0478802589803358],
    ['floorLoad', 'kg/m²', 0.00980665],
  ])('1 %s unit, %s', (kind, symbol, exact) => {
    expectClose(factorOf(kind, symbol), exact, { percent: 1e-11 });
  });

  test('to the digits of the check values', () => {
    expectClose(factorOf('floorLoad', 'psf') * 1000, 47.880259, { absolute: 5e-7 });
    expectClose(factorOf('pressure', 'psi') * 1e5, 6894.757, { absolute: 5e-4 });
    expectClose(factorOf('power', 'hp') * 1000, 745.7, { absolute: 5e-4 });
  });
});

describe('the table of units', () => {
  const kinds = Object.keys(BASE_UNITS) as QuantityKind[];

  test('the base unit stands first, with the factor 1', () => {
    for (const kind of kinds.filter((each) => UNITS[each].length > 0)) {
      expect(UNITS[kind][0]).toMatchObject({ symbol: BASE_UNITS[kind], factor: 1 });
    }
  });

  test('no spelling stands for two units of a kind, and each is written as it is looked up', () => {
    for (const kind of kinds) {
      const spellings = UNITS[kind].flatMap((each) => [...new Set(each.spellings)]);
      expect(new Set(spellings).size).toBe(spellings.length);
      expect(spellings.map(unitKey)).toEqual(spellings);
    }
  });

  test('a unit of another kind is not taken', () => {
    expect(unitNamed('mass', 'mm')).toBeUndefined();
    expect(unitNamed('length', 'kg')).toBeUndefined();
    expect(unitNamed('money', 'EUR')).toBeUndefined();
  });

  test('a kind without units still says what a bare number is', () => {
    expect(bareUnit('money', 'inch')).toMatchObject({ symbol: 'money', factor: 1 });
  });
});
