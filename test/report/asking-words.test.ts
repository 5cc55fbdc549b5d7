import { describe, expect, test } from 'vitest';
import { becauseLine, notAskedLead, notAskedReason, toAskWords } from '../../src/report/asking-words.ts';

const NARROWS = {
  kind: 'narrows',
  touches: 14,
  ordersOnly: false,
  left: 31,
  outOf: null,
  alone: false,
} as const;

describe('why a question is asked now', () => {
  test.each([
    [NARROWS, 'Asked now because it may drop 14 of the 31 arrangements that may still win.'],
    [
      { ...NARROWS, touches: 31 },
      'Asked now because it may drop any of the 31 arrangements that may still win.',
    ],
    [
      { ...NARROWS, ordersOnly: true },
      'Asked now because it may change which of the 31 that may still win comes first.',
    ],
    [
      { ...NARROWS, touches: 1, left: 1 },
      'Asked now because the one arrangement that may still win hangs on it.',
    ],
    [
      { ...NARROWS, outOf: 12_345 },
      'Asked now because it may drop 14 of the 31 that may win, of those looked at; 12 345 are not ruled out.',
    ],
    [
      { ...NARROWS, touches: 31, outOf: 900 },
      'Asked now because it may drop any of the 31 that may win, of those looked at; 900 are not ruled out.',
    ],
    [
      { ...NARROWS, ordersOnly: true, outOf: 900 },
      'Asked now because it may change which of the 31 that may win comes first, of those looked at; 900 are not ruled out.',
    ],
    [
      { ...NARROWS, left: 1, touches: 1, outOf: 900 },
      'Asked now because the one that may win of those looked at hangs on it; 900 are not ruled out.',
    ],
    [{ ...NARROWS, touches: 0, outOf: 900 }, 'Asked now because it can still change the result.'],
    [{ ...NARROWS, touches: 0 }, 'Asked now because it can still change the result.'],
    [{ ...NARROWS, alone: true }, 'Asked now because this alone can still change the result.'],
  ])('%o', (because, words) => {
    expect(becauseLine(because)).toBe(words);
  });
});

test('what is not asked is said to be proven only where it is', () => {
  const proven = { outcome: 'none', isProven: true, byFew: false } as const;
  const open = { outcome: 'open', isProven: false, byFew: false } as const;
  expect(notAskedLead(proven)).toContain('cannot change the result any more: no arrangement passes');
  expect(notAskedLead(open)).not.toContain('any more');
  expect(notAskedReason(['swing', 'doorway'], proven)).toBe(
    'cannot change the result any more, whatever it means for swing and doorway',
  );
  expect(notAskedReason(['swing'], open)).toBe('nothing that is open hangs on it');
  expect(becauseLine({ kind: 'settled', taken: null, ...open })).toContain('as things stand');
  // of a few nothing is said of what was not looked at
  const few = { ...open, byFew: true };
  expect(notAskedReason(['swing'], few)).toBe('nothing that was looked at so far hangs on it');
  expect(notAskedLead(few)).toContain('nothing that was looked at so far hangs on them');
});

test('what is taken for known meanwhile is never said to be unable to change the result', () => {
  const proven = { outcome: 'recommended', isProven: true, byFew: false } as const;
  const words = becauseLine({ kind: 'settled', taken: '900, an assumption', ...proven });
  expect(words).toBe(
    'It would not be asked by itself. Taken meanwhile: 900, an assumption. Another value may change the result.',
  );
});

test.each([
  [{ toAsk: 1, isBasic: true }, '1 basic fact to go'],
  [{ toAsk: 5, isBasic: false }, 'about 5 to go'],
  [{ toAsk: 1, isBasic: false }, '1 to go'],
  [{ toAsk: 1, isBasic: false, byFew: true }, 'about 1 to go'],
  [{ toAsk: 0, isBasic: false }, 'nothing more to ask'],
  [{ toAsk: null, isBasic: true }, 'basic facts first'],
  [{ toAsk: null, isBasic: false }, 'what to ask is being worked out'],
])('how far it is: %o', (needed, words) => {
  expect(toAskWords({ byFew: false, ...needed })).toBe(words);
});
