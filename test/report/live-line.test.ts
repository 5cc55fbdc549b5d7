import { expect, test } from 'vitest';
import { type LiveNumbers, liveLine } from '../../src/report/live-line.ts';

const SAME: LiveNumbers = {
  left: 41,
  total: 96,
  leftBefore: 41,
  dropped: null,
  newLeader: null,
  nearest: null,
  deciding: 9,
  decidingBefore: 9,
};

test.each([
  ['the first judgment', { leftBefore: null, decidingBefore: null }, '41 of 96 arrangements left.'],
  [
    'what dropped most',
    { leftBefore: 53, dropped: { check: 'swing', count: 12 } },
    '41 of 96 arrangements left; swing dropped 12.',
  ],
  [
    'what dropped most of several',
    { leftBefore: 61, dropped: { check: 'swing', count: 24 } },
    '41 of 96 arrangements left, 20 fewer, mainly by swing.',
  ],
  [
    'what dropped most at first',
    { leftBefore: null, dropped: { check: 'swing', count: 50 } },
    '41 of 96 arrangements left, 55 fewer, mainly by swing.',
  ],
  [
    'who is ahead now',
    {
      leftBefore: 53,
      dropped: { check: 'tilt-moment', count: 12 },
      newLeader: { machine: 'Rowan', rotary: 'Wren' },
    },
    '41 of 96 arrangements left; moment on the tilt axis dropped 12; ahead now: Rowan with Wren.',
  ],
  ['more than before', { leftBefore: 30 }, '41 of 96 arrangements left, 11 more than before.'],
  ['no change', {}, 'Still 41 of 96 arrangements left.'],
  [
    'fewer unknown values',
    { deciding: 1, decidingBefore: 2 },
    'Still 41 of 96 arrangements left; 1 unknown value can still decide, 2 before.',
  ],
  [
    'no unknown value',
    { deciding: 0 },
    'Still 41 of 96 arrangements left; nothing that is still unknown can change the answer.',
  ],
  [
    'a machine with its own table ahead',
    { newLeader: { machine: 'Yew', rotary: null } },
    'Still 41 of 96 arrangements left; ahead now: Yew.',
  ],
  [
    'what stops the nearest where none is left',
    {
      left: 0,
      leftBefore: 0,
      deciding: 0,
      nearest: { machine: 'Rowan', rotary: 'Wren', check: 'tilt-moment' },
    },
    'Still 0 of 96 arrangements left; moment on the tilt axis drops the nearest, Rowan with Wren.',
  ],
  [
    'the same where an answer dropped the last',
    {
      left: 0,
      leftBefore: 3,
      dropped: { check: 'swing', count: 3 },
      nearest: { machine: 'Yew', rotary: null, check: 'swing' },
    },
    '0 of 96 arrangements left; swing dropped 3; swing drops the nearest, Yew.',
  ],
  ['one arrangement', { left: 1, total: 1, leftBefore: 1 }, 'Still 1 of 1 arrangement left.'],
] as const satisfies readonly (readonly [string, Partial<LiveNumbers>, string])[])(
  'says in one line: %s',
  (_, change, expected) => expect(liveLine({ ...SAME, ...change })).toBe(expected),
);
