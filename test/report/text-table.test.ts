import { describe, expect, test } from 'vitest';
import { tableLines } from '../../src/report/exports/text-table.ts';

const HEAD = ['Part', 'Hours now', 'Price'];
const ALIGN = ['left', 'right', 'right'] as const;

describe('a table of text', () => {
  test('in columns where it fits', () => {
    expect(tableLines(HEAD, [['Hinge', '12 h', '7 EUR']], ALIGN, 40)).toEqual([
      'Part   Hours now  Price',
      'Hinge       12 h  7 EUR',
    ]);
  });

  test('the widest column gives way first, its cells broken at words', () => {
    expect(tableLines(HEAD, [['Sampling valve body', '12 h', '7 EUR']], ALIGN, 30)).toEqual([
      'Part          Hours now  Price',
      'Sampling           12 h  7 EUR',
      'valve body',
    ]);
  });

  test('one below the other where a word does not fit, or a cell would take too many lines', () => {
    const stacked = ['- Ball-bearing', '  Hours now: 12 h', '  Price: 7 EUR'];
    expect(tableLines(HEAD, [['Ball-bearing', '12 h', '7 EUR']], ALIGN, 20)).toEqual(stacked);
    const long = 'a b c d e f g h i j k l m n o p q r s t u v w x y z';
    expect(tableLines(['Part', 'Why'], [['Hinge', long]], ['left', 'left'], 16).slice(0, 2)).toEqual([
      '- Hinge',
      '  Why: a b c d',
    ]);
  });
});
