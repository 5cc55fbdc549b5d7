import { describe, expect, test } from 'vitest';
import { fieldAt } from '../../src/importing/fields/index.ts';
import type { CellContext } from '../../src/importing/rows/cell-reading.ts';
import { readCell } from '../../src/importing/rows/read-cell.ts';

const NOTHING_SAID: CellContext = { unit: null, units: 'unknown', decimals: 'unknown' };

function read(path: string, text: string, context: Partial<CellContext> = {}) {
  const field = fieldAt('rotaries', path) ?? fieldAt('machines', path);
  if (field === undefined) throw new Error(`no field ${path}`);
  const reading = readCell(text, field, { ...NOTHING_SAID, ...context });
  if (reading.ok) return reading.value;
  return reading.why === 'no-unit' ? 'no unit' : `${reading.found}, ${reading.expected}`;
}

describe('nothing is invented', () => {
  test.each(['', '-', '–', 'n/a', 'N/A', '?', '#N/A', 'tbd', 'unknown'])('%j is not known', (text) => {
    expect(read('swing', text, { unit: 'mm' })).toBe('unknown');
  });

  test('a length without a unit is not read', () => {
    expect(read('swing', '180')).toBe('no unit');
    expect(read('inertia', '0.12', { units: 'inch' })).toBe('no unit');
  });

  test('a number with two readings is told with both', () => {
    expect(read('mass', '1,500', { unit: 'kg' })).toBe(
      '"1,500 kg" can be 1500 kg or 1.5 kg, write 1500 kg or 1.5 kg',
    );
  });

  test('no zero for a word', () => {
    expect(read('swing', 'large', { unit: 'mm' })).toMatch(/^"large" is no number, expected a length/);
    expect(read('mass', 'none', { unit: 'kg' })).toMatch(/is no number/);
  });

  test.each([
    ['payload.level', '60/40', 'kg'],
    ['power.volts', '220/440', 'V'],
    ['power.volts', '480 3/60', 'V'],
    ['mass', '1/2', 't'],
    ['swing', '200/250', 'mm'],
    ['swing', '10/16', 'in'],
    ['price', '28500/31000', null],
  ])('%s: two numbers with a slash, %j, are no fraction', (path, text, unit) => {
    expect(read(path, text, { unit })).toBe(
      `"${text}" is two numbers with a slash between them, expected one${path === 'swing' ? ', or a fraction of an inch such as 3/8' : ''}`,
    );
  });

  test('what is quoted stands in the cell', () => {
    expect(read('mass', 'approx. 100', { unit: 'kg' })).toMatch(/^"approx\. 100" is no number/);
  });

  test('a text that would be a formula has an apostrophe before it', () => {
    expect(read('name', "'@SUM(A1)")).toBe('@SUM(A1)');
    expect(read('name', "'=A1")).toBe('=A1');
    expect(read('name', "'t Nest")).toBe("'t Nest");
  });

  test('a maker that no catalog file takes', () => {
    expect(read('maker', 'x'.repeat(121))).toContain('has 121 characters');
    expect(read('maker', 'x'.repeat(120))).toBe('x'.repeat(120));
  });

  test('a formula and its error', () => {
    expect(read('swing', '=B2*2', { unit: 'mm' })).toMatch(/is a formula/);
    expect(read('swing', '#REF!', { unit: 'mm' })).toMatch(/error of a formula/);
  });
});

describe('units', () => {
  test('of the column', () => expect(read('swing', '7', { unit: 'in' })).toBe(177.8));
  test('of the cell, which wins', () => expect(read('swing', '180 mm', { unit: 'in' })).toBe(180));
  test('an inch mark and a fraction', () => expect(read('swing', '3 1/2"', { unit: 'mm' })).toBe(88.9));
  test('a fraction of an inch, and one behind a whole number', () => {
    expect(read('swing', '5/8', { unit: 'in' })).toBe(15.875);
    expect(read('spindleDrive.power', '7 1/2', { unit: 'hp' })).toBeCloseTo(5.59275, 4);
    expect(read('speed.rotary', '80 1/min')).toBe(80);
  });
  test('of the map, for lengths and masses', () => {
    expect(read('swing', '10', { units: 'inch' })).toBe(254);
    expect(read('mass', '100', { units: 'inch' })).toBe(45.359237);
  });
  test('that every shop leaves out', () => expect(read('speed.rotary', '80')).toBe(80));
  test('of another kind are told', () => {
    expect(read('swing', '180 kg', { unit: 'mm' })).toMatch(/"kg" is no unit of length/);
  });
  test('torque in foot-pounds', () => {
    expect(read('tiltMoment', '10', { unit: 'lbf·ft' })).toBe(13.5581794833);
  });
});

describe('decimals that the map settles', () => {
  test('point', () => expect(read('mass', '1,500', { unit: 'kg', decimals: 'point' })).toBe(1500));
  test('comma', () => expect(read('mass', '1,500', { unit: 'kg', decimals: 'comma' })).toBe(1.5));
  test('comma, with thousands', () =>
    expect(read('mass', '1.500,5', { unit: 'kg', decimals: 'comma' })).toBe(1500.5));
  test('a price has no thousandths', () => {
    expect(read('price', '28,500')).toBe(28500);
    expect(read('price', '€ 28.500')).toBe(28500);
    expect(read('price', '1,250,000 EUR')).toBe(1250000);
  });
});

describe('other forms', () => {
  test.each(['-20 … 110', '-20..110', '-20 to 110', '-20° to 110°', '-20/+110'])('the range %s', (text) => {
    expect(read('tilt', text, { unit: '°' })).toEqual([-20, 110]);
  });
  test.each(['100-610', '100 - 610 mm', '100–610'])('the range %s without a sign', (text) => {
    expect(read('noseToTable', text, { unit: 'mm' })).toEqual([100, 610]);
  });
  test.each(['3-1/2', '610-100', '-100-610', '5-18-100'])('no range: %s', (text) => {
    expect(read('noseToTable', text, { unit: 'in' })).toMatch(/is no range|runs the wrong way/);
  });
  test('signs before and behind a number', () => {
    expect(read('accuracy.rotary', '+/-15', { unit: 'arcsec' })).toBe(15);
    expect(read('accuracy.rotary', '± 15"', { unit: 'arcsec' })).toBe(15);
    expect(read('faceplate', 'Ø 170', { unit: 'mm' })).toBe(170);
    expect(read('faceplate', 'Ø170')).toBe('no unit');
    expect(read('price', '9.900,-', { decimals: 'comma' })).toBe(9900);
    expect(read('price', '9900.--')).toBe(9900);
  });
  test('plus and minus', () => expect(read('tilt', '±30')).toEqual([-30, 30]));
  test('no tilt', () => expect(read('tilt', 'none')).toBe(null));
  test('one end is no range', () => expect(read('tilt', '110')).toMatch(/is no range/));
  test('three sizes', () => {
    expect(read('travel', '30 x 20 x 20', { unit: 'in' })).toEqual([762, 508, 508]);
    expect(read('travel', '760/510/510 mm')).toEqual([760, 510, 510]);
    expect(read('travel', '760 x 510', { unit: 'mm' })).toMatch(/expected 3, with x between/);
  });
  test('pitches', () =>
    expect(read('hold.tilt-along-x.pitches', '80 / 160', { unit: 'mm' })).toEqual([80, 160]));
  test('a class in words of the trade', () => {
    expect(read('class', 'Single Axis')).toBe('single-axis');
    expect(read('class', 'trunion')).toMatch(/did you mean trunnion/);
  });
  test('features', () => {
    expect(read('features.lookAhead', 'std')).toBe('standard');
    expect(read('features.lookAhead', 'option')).toBe('unknown');
    expect(read('features.lookAhead', '3,900')).toBe(3900);
    expect(read('features.lookAhead', 'no')).toBe(null);
  });
});
