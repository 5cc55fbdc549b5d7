import { expect, test } from 'vitest';
import { beginning } from '../../../src/ui/state/ui.ts';
import { begun, go, type Talk, WORLD } from '../../session/talk.ts';
import { textFrame } from '../demo-screens.ts';

const waiting = ({ session }: Talk): string => {
  const ui = beginning({ ...session, at: { at: 'next' } }, null);
  return textFrame({ ...ui, over: null }, { columns: 80, rows: 24 }, WORLD).join(' ');
};

test('while the next question is worked out, an answer is said to be saved where there was one', () => {
  const answered = go(begun(), 'mm');
  expect(waiting(answered)).toContain('Your answer is saved. What to ask next is being worked out');
  const resumed = waiting({ ...answered, session: { ...answered.session, note: null } });
  expect(resumed).toContain('What to ask next is being worked out');
  expect(resumed).not.toContain('Your answer is saved');
});
