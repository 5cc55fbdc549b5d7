import * as real from '@alcalzone/ansi-tokenize';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as fast from '../../scripts/fast-lines.mjs';

const PIECES = [
  ...['1', '2', '22', '7', '27', '31', '36', '39', '0'].map((code) => `\u001b[${code}m`),
  ...['a', 'b ', '軸', 'é', '  ', '✓'],
];

const lineOf = (
  { tokenize, styledCharsFromTokens, styledCharsToString }: typeof fast,
  text: string,
): string =>
  styledCharsToString([
    { type: 'char', value: ' ', fullWidth: false, styles: [] },
    ...styledCharsFromTokens(tokenize(text)),
  ]);

describe('lines taken apart and put together sooner', () => {
  test('are those of the library, the first time and the second', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...PIECES), { maxLength: 12 }), (pieces) => {
        const text = pieces.join('');
        const expected = lineOf(real, text);
        expect(lineOf(fast, text)).toBe(expected);
        expect(lineOf(fast, text)).toBe(expected);
      }),
    );
  });
});
