import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { cut, fitRow, padded, wrapped } from '../../../src/ui/look/cells.ts';
import { row, textOfRow } from '../../../src/ui/look/row.ts';
import { asciiRow } from '../../../src/ui/look/signs.ts';

const TEXT = fc
  .array(fc.constantFrom('a', 'word', ' ', '軸', 'e\u0301', '😀', '…', 'µm'), { maxLength: 30 })
  .map((pieces) => pieces.join(''));
const WIDTH = fc.integer({ min: 1, max: 40 });

describe('whatever the text, nothing is wider than its room', () => {
  test('cut, padded and fitted', () => {
    fc.assert(
      fc.property(TEXT, WIDTH, (text, width) => {
        expect(stringWidth(cut(text, width))).toBeLessThanOrEqual(width);
        expect(stringWidth(padded(text, width))).toBe(width);
        const fitted = textOfRow(fitRow({ spans: [...row(text).spans, ...row(text).spans] }, width));
        expect(stringWidth(fitted)).toBeLessThanOrEqual(width);
      }),
    );
  });
  test('wrapped, with no letter lost where there is room for the widest', () => {
    fc.assert(
      fc.property(TEXT, fc.integer({ min: 2, max: 40 }), (text, width) => {
        const lines = wrapped(text, width);
        for (const line of lines) expect(stringWidth(line)).toBeLessThanOrEqual(width);
        // wrapping writes a letter and its mark as one
        expect(lines.join('').replace(/\s/g, '')).toBe(text.normalize('NFC').replace(/\s/g, ''));
      }),
    );
  });
});

test('what is cut off shows', () => {
  expect([cut('Rudder hinge', 7), cut('Rudder', 7), cut('軸軸軸', 4), cut('abc', 0)]).toEqual([
    'Rudder…',
    'Rudder',
    '軸…',
    '',
  ]);
});

test('our own signs keep their width in ASCII; letters of names stay', () => {
  const signs = '❯▲▼─━│█▓↑↓←→✓✗▏…';
  expect(textOfRow(asciiRow(row(signs)))).toMatch(/^[ -~]{16}$/);
  expect(textOfRow(asciiRow(row('Gelenk für 軸')))).toBe('Gelenk für 軸');
});
