import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answersBeside } from '../../src/session/answers-beside.ts';
import { readSaved, savedOf } from '../../src/session/saved.ts';
import type { Event, Session } from '../../src/session/session.ts';
import { resumed } from '../../src/session/start.ts';
import { asked, go, oneBlock, screen, type Talk, WORLD } from './talk.ts';

const find = (text: string): Event => ({ type: 'try-find', text });
const drop: Event = { type: 'drop' };
const keep: Event = { type: 'keep' };
const name = (text: string): Event => ({ type: 'name', name: text });
/** One part, every question answered; at the result. */
const atResult = (): Talk => go(oneBlock(), { type: 'go', to: { at: 'result' } });
/** All but what was said last. */
const silent = ({ session }: Talk): Session => ({ ...session, note: null });
const why = (talk: Talk): string => screen(talk).error?.why ?? '';
const named = (talk: Talk, text: string, budget: string): Talk =>
  go(talk, find('budget'), budget, name(text), { type: 'back' });

/** Answers that can be tried one after the other, by words of their title. */
const TRIES = [
  ['budget', '90000'],
  ['shop rate', 'not sure'],
  ['tolerance', '0.02'],
  ['material', 'titanium'],
  ['size', '300 x 200 x 100'],
  ['name', 'Gate'],
] as const;

describe('another answer is tried from the result', () => {
  test('its question is asked as usual, and leads to what it changes', () => {
    const question = go(atResult(), find('budget'));
    expect(asked(question)).toBe('budget');
    const tried = go(question, '90000');
    expect(screen(tried)).toMatchObject({
      kind: 'trial',
      of: null,
      changes: [{ part: null, title: 'Budget' }],
    });
  });

  test('what cannot be understood is refused as in the interview', () => {
    expect(why(go(atResult(), find('budget'), 'plenty'))).not.toBe('');
    expect(why(go(atResult(), find('xyzzy')))).toContain('xyzzy');
    expect(why(go(atResult(), find('')))).toContain('Which answer?');
  });

  test('dropping it gives back exactly the session before', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...TRIES], { minLength: 1 }), (tries) => {
        const before = atResult();
        const tried = tries.reduce<Talk>((talk, [title, reply]) => go(talk, find(title), reply), before);
        expect(silent(tried)).not.toEqual(silent(before));
        expect(silent(go(tried, drop))).toEqual(silent(before));
      }),
      { numRuns: 30 },
    );
  });

  test('keeping it equals having answered that in the interview', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...TRIES], { minLength: 1 }), (tries) => {
        const before = atResult();
        const tried = tries.reduce<Talk>((talk, [title, reply]) => go(talk, find(title), reply), before);
        const answered = tries.reduce<Talk>(
          (talk, [title, reply]) => go(talk, { type: 'find', text: title }, reply),
          before,
        );
        expect(silent(go(tried, keep))).toEqual(silent(answered));
      }),
      { numRuns: 30 },
    );
  });

  test('whoever changes nothing tries nothing', () => {
    const before = atResult();
    expect(silent(go(before, find('budget'), ''))).toEqual(silent(before));
    expect(silent(go(before, find('budget'), { type: 'back' }))).toEqual(silent(before));
  });

  test('back does not lose what is tried', () => {
    const tried = go(atResult(), find('budget'), '90000');
    expect(silent(go(tried, { type: 'back' }))).toEqual(silent(tried));
  });

  test('the result of what is tried is not the end', () => {
    const result = go(atResult(), find('budget'), '90000', { type: 'go', to: { at: 'result' } });
    expect(asked(go(result, 'no'))).toBe('trial');
    expect(go(result, 'no').effects).not.toContainEqual({ kind: 'finish' });
  });
});

describe('variants', () => {
  const three = (): Talk =>
    named(named(named(atResult(), 'Low', '90000'), 'Lower', '80000'), 'Lowest', '70000');

  test('a name puts it aside, and the answers are as before', () => {
    const before = atResult();
    const after = go(before, find('budget'), '90000', name('Low'));
    expect(after.session.kept).toEqual(before.session.kept);
    expect(screen(after)).toMatchObject({ kind: 'variants', names: ['Low'] });
    expect(asked(go(after, { type: 'back' }))).toBe('result');
  });

  test('a fourth is refused with what to do about it', () => {
    const fourth = go(three(), find('budget'), '60000', name('Least'));
    expect(why(fourth)).toContain('remove one first');
    expect(fourth.session.variants).toHaveLength(3);
    expect(asked(go(fourth, drop))).toBe('result');
  });

  test.each(['', '7', 'Present answers', 'low', 'a name that is longer than a column'])(
    'no name: "%s"',
    (text) => {
      const twin = go(named(atResult(), 'Low', '90000'), find('budget'), '80000', {
        type: 'name',
        name: null,
      });
      expect(asked(go(twin, { type: 'reply', text }))).toBe('naming');
      expect(why(go(twin, { type: 'reply', text }))).not.toBe('');
    },
  );

  test('one that is looked at can be left, kept, changed or removed', () => {
    const list = go(three(), { type: 'go', to: { at: 'variants' } });
    const looked = go(list, 'look 2');
    expect(screen(looked)).toMatchObject({ kind: 'trial', of: 'Lower' });
    expect(silent(go(looked, { type: 'back' }))).toEqual(silent(list));
    const kept = go(looked, keep);
    expect(kept.session.kept.shop.budget).toEqual({ from: 'typed', value: 80000 });
    expect(kept.session.variants.map((each) => each.name)).toEqual(['Low', 'Lowest']);
    const changed = go(looked, find('budget'), '85000', name('Lower'));
    expect(changed.session.variants.map(({ kept: { shop } }) => shop.budget)).toEqual(
      [90000, 85000, 70000].map((value) => ({ from: 'typed', value })),
    );
    const removed = go(looked, 'remove');
    expect(removed.session.variants.map((each) => each.name)).toEqual(['Low', 'Lowest']);
    expect(go(list, 'remove low', 'remove 2').session.variants.map((each) => each.name)).toEqual(['Lower']);
  });

  test('are kept in the file, with what is tried, and come back with it', () => {
    const tried = go(three(), find('shop rate'), '99');
    const read = readSaved(JSON.stringify(savedOf(tried.session)));
    if (!read.ok) throw new Error(read.why);
    const again = resumed(read.saved, WORLD, [], null);
    expect(again.variants).toEqual(tried.session.variants);
    expect(again.kept).toEqual(tried.session.kept);
    expect(again.at).toEqual({ at: 'trial' });
    expect(go({ session: again, effects: [] }, drop).session.kept).toEqual(atResult().session.kept);
  });

  test('a file from before there were any opens', () => {
    const { variants: _, trial: __, ...old } = savedOf(three().session);
    const read = readSaved(JSON.stringify(old));
    expect(read.ok && resumed(read.saved, WORLD, [], null).variants).toEqual([]);
  });

  test.each([{ variants: 'none' }, { variants: [{ name: 'x' }] }, { trial: { kept: 3 } }])(
    'a damaged file is refused: %o',
    (more) => {
      const read = readSaved(JSON.stringify({ ...savedOf(atResult().session), ...more }));
      expect(read).toMatchObject({ ok: false });
    },
  );
});

test('a part that some lack is told once', () => {
  const { session } = atResult();
  const fewer = { ...session.kept, parts: [] };
  expect(answersBeside([session.kept, fewer], WORLD).filter(({ title }) => title.startsWith('Part'))).toEqual(
    [{ part: null, title: 'Part Lock gate hinge', words: ['there', 'not there'] }],
  );
});
