import { describe, expect, test } from 'vitest';
import { asked, begun, go, oneBlock, screen } from './talk.ts';

const RESULT = { type: 'go', to: { at: 'result' } } as const;
const written = (file: string) => ({ type: 'written', what: 'report', file }) as const;

describe('the result', () => {
  test('is what Enter at the review leads to; back leads to the review again', () => {
    const talk = go(oneBlock(), '');
    const now = screen(talk);
    expect(now.kind === 'result' && now.decision?.outcome).toBe('recommended');
    expect(asked(go(talk, { type: 'back' }))).toBe('review');
  });

  test('in the middle of the interview leads back to the question', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', 'block', '90 x 60 x 55', RESULT);
    expect(asked(talk)).toBe('result');
    expect(asked(go(talk, { type: 'back' }))).toBe('material');
  });

  test.each([
    ['', 'fivesides-report.md'],
    ['yes', 'fivesides-report.md'],
    ['for the bank.md', 'for the bank.md'],
  ])('%j writes %s, and that is the end', (reply, file) => {
    const talk = go(oneBlock(), '', reply);
    expect(talk.effects.at(-1)).toEqual({ kind: 'write', what: 'report', file, overwrite: false });
    expect(asked(talk)).toBe('result');
    const done = go(talk, written(file));
    expect(asked(done)).toBe('done');
    expect(done.effects.at(-1)).toEqual({ kind: 'finish' });
  });

  test('no ends without a file', () => {
    const talk = go(oneBlock(), '', 'no');
    expect(talk.effects.slice(-1)).toEqual([{ kind: 'finish' }]);
    expect(talk.effects.some(({ kind }) => kind === 'write')).toBe(false);
  });

  test('a word that is no file name is not written to', () => {
    const talk = go(oneBlock(), '', 'maybe');
    expect(talk.session.note).toMatchObject({ kind: 'error', why: expect.stringContaining('.md') });
    expect(talk.effects.some(({ kind }) => kind === 'write')).toBe(false);
  });
});

describe('a file that is there already', () => {
  const there = go(oneBlock(), '', '', { type: 'exists', what: 'report', file: 'fivesides-report.md' });

  test('is replaced only when that is said', () => {
    expect(asked(there)).toBe('overwrite');
    expect(there.effects.filter((effect) => effect.kind === 'write' && effect.overwrite)).toEqual([]);
    const yes = go(there, 'yes');
    expect(yes.effects.at(-1)).toMatchObject({ kind: 'write', overwrite: true });
    expect(go(yes, written('fivesides-report.md')).effects.at(-1)).toEqual({ kind: 'finish' });
  });

  test('stays when it is not to be replaced, and another name is asked for', () => {
    expect(asked(go(there, 'no'))).toBe('result');
    expect(asked(go(there, { type: 'back' }))).toBe('result');
    expect(go(there, 'perhaps').session.note?.kind).toBe('error');
    expect(go(there, '').session.note?.kind).toBe('error');
  });
});

describe('files on the way', () => {
  test('answers are written where they are asked for, and the interview goes on', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', { type: 'write', what: 'answers', file: null });
    expect(asked(talk)).toBe('file');
    const named = go(talk, 'shop.yaml');
    expect(named.effects.at(-1)).toMatchObject({ what: 'answers', file: 'shop.yaml' });
    const done = go(named, { type: 'written', what: 'answers', file: 'shop.yaml' });
    expect(asked(done)).toBe('shape');
    expect(done.session.note).toEqual({ kind: 'said', words: 'The answers are in shop.yaml.' });
  });

  test('a file named with the command needs no question', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', { type: 'write', what: 'answers', file: 'shop.yaml' });
    expect(talk.effects.at(-1)).toEqual({
      kind: 'write',
      what: 'answers',
      file: 'shop.yaml',
      overwrite: false,
    });
    expect(asked(talk)).toBe('shape');
    const exists = go(talk, { type: 'exists', what: 'answers', file: 'shop.yaml' }, 'no');
    expect(exists.session.note).toEqual({ kind: 'said', words: 'Nothing is written.' });
    expect(asked(exists)).toBe('shape');
  });

  test('what the disk refuses is said, and another name can be typed', () => {
    const talk = go(
      begun(),
      'mm',
      'none',
      'Hinge',
      { type: 'write', what: 'answers', file: null },
      'no/where.yaml',
    );
    const refused = go(talk, {
      type: 'not-written',
      what: 'answers',
      file: 'no/where.yaml',
      why: 'there is no such folder',
    });
    expect(refused.session.note).toMatchObject({
      kind: 'error',
      why: expect.stringContaining('no such folder'),
    });
    expect(asked(refused)).toBe('file');
    expect(asked(go(refused, { type: 'back' }))).toBe('shape');
  });

  test('an answers file needs a part', () => {
    const talk = go(begun(), 'mm', 'none', { type: 'write', what: 'answers', file: null });
    expect(talk.session.note).toMatchObject({
      kind: 'error',
      why: expect.stringContaining('at least one part'),
    });
  });

  test('a report needs a result', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', { type: 'write', what: 'report', file: null });
    expect(talk.session.note).toMatchObject({ kind: 'error' });
    expect(asked(talk)).toBe('shape');
  });
});
