import { describe, expect, test } from 'vitest';
import { MOST_UNDONE, type Past, remembered, undo } from '../../src/session/undo.ts';
import { asked, begun, blockReplies, go, oneBlock, type Talk, WORLD } from './talk.ts';

/** Turns one after the other, each remembered. */
function turned(
  start: Talk,
  ...turns: Parameters<typeof go>[1][]
): { readonly talk: Talk; readonly past: Past } {
  let talk = start;
  let past: Past = [];
  for (const turn of turns) {
    const next = go(talk, turn);
    past = remembered(past, talk.session, next.session);
    talk = next;
  }
  return { talk, past };
}

const wordsAfter = (start: Talk, ...turns: Parameters<typeof go>[1][]) => {
  const { talk, past } = turned(start, ...turns);
  return undo(past, talk.session, WORLD)?.words;
};
const find = (text: string) => ({ type: 'find', text }) as const;
const TABLE = { type: 'table', text: 'Name;Mass\nCleat;1\nPintle;2\nValve;3\nStem;4' } as const;

describe('requirement 17: undo says what is as it was', () => {
  test('an answer that was changed', () => {
    expect(wordsAfter(oneBlock(), find('budget'), '150000')).toMatch(
      /^Budget is 180.000 EUR again, it was 150.000 EUR\.$/,
    );
  });

  test('an answer that was given for the first time, and one that is not sure', () => {
    expect(wordsAfter(begun(), 'inch')).toMatch(/^Units is open again, it was /);
    expect(wordsAfter(oneBlock(), find('ceiling'), 'not sure')).toBe(
      'Ceiling is 5000 mm again, it was not sure.',
    );
  });

  test('parts that were added, copied or removed', () => {
    const parts = { type: 'go', to: { at: 'parts' } } as const;
    expect(wordsAfter(oneBlock(), parts, TABLE)).toBe('Cleat, Pintle, Valve and 1 more are taken out again.');
    expect(wordsAfter(oneBlock(), parts, 'remove 1', 'yes')).toBe('Lock gate hinge is there again.');
    const copied = wordsAfter(oneBlock(), parts, 'copy 1', 'Cleat');
    expect(copied).toMatch(/Name is open again, it was Cleat/);
  });

  test('also after a jump, back at the place where the change was made', () => {
    const { talk, past } = turned(oneBlock(), find('budget'), '150000', find('ceiling'));
    const taken = undo(past, talk.session, WORLD);
    expect([taken?.session.at, taken?.session.kept]).toEqual([
      { at: 'question', id: 'budget', subject: null },
      oneBlock().session.kept,
    ]);
  });

  test('every change of a whole interview, one after the other, down to nothing', () => {
    const { talk, past } = turned(begun(), 'mm', 'none', ...blockReplies('Cleat'));
    let now = { session: talk.session, past };
    let count = 0;
    for (let taken = undo(now.past, now.session, WORLD); taken !== null; count += 1) {
      expect(taken.words).toMatch(/ again[.,]/);
      now = taken;
      taken = undo(now.past, now.session, WORLD);
    }
    expect(count).toBe(2 + blockReplies('').length);
    expect(asked({ session: now.session, effects: [] })).toBe('units');
  });

  test('going about, asking why and errors are no changes; a table is one', () => {
    const { past } = turned(oneBlock(), find('budget'), 'a lot', { type: 'back' }, find('parts'), TABLE);
    expect(past).toHaveLength(1);
  });

  test('the past has an end', () => {
    const { session } = oneBlock();
    let past: Past = [];
    for (let index = 0; index < MOST_UNDONE + 5; index += 1) {
      const shop = { ...session.kept.shop, budget: { from: 'typed', value: index } as const };
      past = remembered(past, session, { ...session, kept: { ...session.kept, shop } });
    }
    expect(past).toHaveLength(MOST_UNDONE);
  });
});
