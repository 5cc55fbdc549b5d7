import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { displayText, escapeInQuotes } from '../../src/report/display-text.ts';
import { STEERS } from './steers.ts';

describe('Text from outside', () => {
  it.each([
    ['a tab and a line break become a space', 'a\t\r\nb', 'a b'],
    ['an escape code is shown', 'a\u001b[2Jb', 'a\\u{1b}[2Jb'],
    ['a mark of direction is shown', 'a\u202eb', 'a\\u{202e}b'],
    ['half a pair is shown', 'a\ud800', 'a\\u{d800}'],
    ['a tag is shown', 'a\u{e0041}', 'a\\u{e0041}'],
    ['letters of other scripts stay', 'Žižka 水車 أبواب', 'Žižka 水車 أبواب'],
  ])('%s', (_what, text, shown) => {
    expect(displayText(text)).toBe(shown);
  });

  it('never steers a display, whatever it holds', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(displayText(text)).not.toMatch(STEERS);
      }),
    );
  });
});

describe('Escapes inside quotes', () => {
  it('read back as what they were', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(JSON.parse(escapeInQuotes(JSON.stringify(text)))).toBe(text);
      }),
    );
  });
});
