import { describe, expect, test } from 'vitest';
import { FIELDS } from '../../src/importing/fields/index.ts';
import { guessColumn } from '../../src/importing/mapping/guess-column.ts';

const sure = (list: 'rotaries' | 'machines', heading: string) => {
  const { sure: field, unit } = guessColumn(list, heading);
  return field === null ? null : `${field.path} ${unit ?? ''}`.trim();
};

describe('a heading is the key that the trade calls so', () => {
  test.each([
    ['X travel (in)', 'travel[0] in'],
    ['Travel Y [mm]', 'travel[1] mm'],
    ['Z-axis travel, mm', 'travel[2] mm'],
    ['Table length [mm]', 'table.size[0] mm'],
    ['Mass kg', 'mass kg'],
    ['Weight (lbs)', 'mass lb'],
    ['Max. table load (kg)', 'table.load kg'],
    ['SPINDLE SPEED (rpm)', 'spindleDrive.speed rev/min'],
    ['Power (kW)', 'spindleDrive.power kW'],
    ['Power (kVA)', 'power.kVA kVA'],
    ['T-slot width / mm', 'table.slots.width mm'],
    ['Travel X/Y/Z (mm)', 'travel mm'],
    ['TCP', 'features.toolCenterPoint'],
    ['Tilt range (°)', 'builtIn.tilt °'],
  ])('machines: %s', (heading, expected) => expect(sure('machines', heading)).toBe(expected));

  test.each([
    ['Swing dia. (in)', 'swing in'],
    ['Centre height [mm]', 'centerHeight mm'],
    ['Key width, tilt along X (mm)', 'hold.tilt-along-x.keyWidth mm'],
    ['Manufacturer', 'maker'],
    ['Indexing accuracy rotary (arcsec)', 'accuracy.rotary arcsec'],
  ])('rotaries: %s', (heading, expected) => expect(sure('rotaries', heading)).toBe(expected));

  test('every key is known by its own path, and by each word that is no doubtful one', () => {
    for (const list of ['rotaries', 'machines'] as const) {
      for (const { path } of FIELDS[list]) expect(sure(list, path), path).toBe(path);
    }
  });
});

describe('what is not sure is not taken', () => {
  test('a torque of a table with two axes is of one of them', () => {
    const guess = guessColumn('rotaries', 'Clamping torque (N·m)');
    expect(guess.sure).toBe(null);
    expect(guess.likely).toContain('brakeTorque.rotary');
    expect(guess.likely).toContain('brakeTorque.tilt');
  });

  test('a speed that is not the spindle’s', () => {
    expect(sure('machines', 'Rapid speed (m/min)')).toBe(null);
  });

  test('a unit of another kind', () => {
    expect(sure('machines', 'Mass (mm)')).toBe(null);
    expect(sure('rotaries', 'Swing (kg)')).toBe(null);
  });

  test('a slip of the pen is suggested, not taken', () => {
    const guess = guessColumn('rotaries', 'Faceplat (mm)');
    expect(guess.sure).toBe(null);
    expect(guess.likely[0]).toBe('faceplate');
  });

  test('supply without a unit may be spindle or mains', () => {
    expect(sure('machines', 'Power')).toBe(null);
  });

  test('a color', () => {
    expect(guessColumn('rotaries', 'Color')).toEqual({ sure: null, likely: [], unit: null, currency: null });
  });
});

test('the heading of a price names its currency', () => {
  expect(guessColumn('rotaries', 'Price (EUR)')).toMatchObject({ currency: 'EUR', unit: null });
  expect(guessColumn('machines', 'List price [€]').currency).toBe('EUR');
  // dollars of several countries
  expect(guessColumn('machines', 'List price [$]').currency).toBe(null);
});
