import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatQuantity } from '../../src/quantities/format-quantity.ts';
import { BASE_UNITS, type QuantityKind } from '../../src/quantities/kinds.ts';
import { parseQuantity, quantityFromNumber } from '../../src/quantities/parse-quantity.ts';
import { looksLikeRange, parseRange } from '../../src/quantities/parse-range.ts';
import { UNITS } from '../../src/quantities/units.ts';

const kinds = fc.constantFrom(...(Object.keys(BASE_UNITS) as QuantityKind[]));
const numbers = fc.oneof(
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  fc.integer({ min: -100000, max: 100000 }),
  fc.double({ min: -1, max: 1, noNaN: true }),
);
const units = fc.constantFrom('mm' as const, 'inch' as const);

test('what is written out reads back as the same text', () => {
  fc.assert(
    fc.property(kinds, numbers, units, (kind, value, shownIn) => {
      const text = formatQuantity(value, BASE_UNITS[kind], { shownIn });
      const read = parseQuantity(text, { kind, units: shownIn });
      expect(read).toMatchObject({ ok: true });
      if (read.ok) expect(formatQuantity(read.value, BASE_UNITS[kind], { shownIn })).toBe(text);
    }),
  );
});

test('what is written out is the number to three digits, or to a millionth', () => {
  fc.assert(
    fc.property(kinds, numbers, (kind, value) => {
      const read = parseQuantity(formatQuantity(value, BASE_UNITS[kind]), { kind, units: 'mm' });
      if (!read.ok) throw new Error(JSON.stringify(read.fault));
      expect(Math.abs(read.value - value)).toBeLessThanOrEqual(Math.max(Math.abs(value) * 0.005, 1e-6));
    }),
  );
});

test('every unit reads as its factor says, with and without a space', () => {
  const pairs = (Object.keys(UNITS) as QuantityKind[]).flatMap((kind) =>
    UNITS[kind].map((unit) => ({ kind, unit })),
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...pairs),
      fc.integer({ min: 1, max: 9999 }),
      ({ kind, unit }, thousandths) => {
        const number = thousandths / 1000;
        const expected = Number((number * unit.factor).toPrecision(12));
        for (const text of [`${number} ${unit.symbol}`, `${number}${unit.symbol}`]) {
          expect(parseQuantity(text, { kind, units: 'mm' })).toMatchObject({ ok: true, value: expected });
        }
      },
    ),
  );
});

test('inches and millimeters of the same length are the identical number', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10_000_000 }), (tenThousandths) => {
      const inches = tenThousandths / 10_000;
      const millimeters = (tenThousandths * 254) / 100_000;
      const one = quantityFromNumber(inches, { kind: 'length', units: 'inch' });
      const other = parseQuantity(`${millimeters.toFixed(5)} mm`, { kind: 'length', units: 'inch' });
      expect(one.ok && one.value).toBe(other.ok && other.value);
    }),
  );
});

test('whatever is typed, reading never throws, and what is read is a finite number', () => {
  const pieces = fc.constantFrom(
    ...'0123456789.,\'"/-+eE ½µ°%'.split(''),
    'mm',
    'in',
    'ft',
    ' to ',
    '..',
    'NaN',
    '\u0000',
  );
  const typed = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(pieces, { maxLength: 12 }).map((list) => list.join('')),
  );
  fc.assert(
    fc.property(typed, kinds, units, (text, kind, fileUnits) => {
      const read = parseQuantity(text, { kind, units: fileUnits });
      if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
      if (looksLikeRange(text)) {
        const range = parseRange(text, { kind, units: fileUnits });
        if (range.ok) expect(range.low.value).toBeLessThanOrEqual(range.high.value);
      }
    }),
    { numRuns: 2000 },
  );
});
