import { describe, expect, test } from 'vitest';
import { type Migration, readSaved, savedOf } from '../../src/session/saved.ts';
import { offered, resumed } from '../../src/session/start.ts';
import { answers, asked, begun, blockReplies, go, oneBlock, type Talk, WORLD } from './talk.ts';

const text = ({ session }: Talk) => JSON.stringify(savedOf(session));
function reread(talk: Talk): Talk {
  const reading = readSaved(text(talk));
  if (!reading.ok) throw new Error(reading.why);
  return { session: resumed(reading.saved, WORLD, reading.saved.catalogs, null), effects: [] };
}

describe('a saved interview', () => {
  test('is saved after every answer that was taken, and after no other turn', () => {
    const talk = go(
      begun(),
      'mm',
      'none',
      'Hinge',
      'cube',
      { type: 'back' },
      { type: 'go', to: { at: 'parts' } },
    );
    expect(talk.effects).toEqual([{ kind: 'save' }, { kind: 'save' }, { kind: 'save' }]);
  });

  test('goes on at the first open question with every answer', () => {
    const talk = go(begun(), 'inch', 'none', ...blockReplies('Lock gate hinge').slice(0, 7));
    const again = reread(talk);
    expect(asked(again)).toBe('motion');
    expect(again.session.kept).toEqual(talk.session.kept);
    expect(answers(again)).toEqual(answers(talk));
  });

  test('goes on at the first open question even where later ones are answered', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', { type: 'find', text: 'budget' }, '1000');
    expect(asked(reread(talk))).toBe('shape');
  });

  test('without an open question goes on at the review, or at the question where it stood', () => {
    expect(asked(reread(oneBlock()))).toBe('review');
    const there = { ...oneBlock().session, at: { at: 'question', id: 'tolerance', subject: 0 } } as const;
    expect(asked(reread({ session: there, effects: [] }))).toBe('tolerance');
  });

  test('before the first part goes on with the first part', () => {
    expect(asked(reread(go(begun(), 'mm', 'none')))).toBe('name');
  });

  test('is offered, and either gone on with or replaced', () => {
    const reading = readSaved(text(go(begun(), 'mm', 'none', 'Hinge')));
    if (!reading.ok) throw new Error(reading.why);
    const offer: Talk = { session: offered(reading.saved, [], null), effects: [] };
    expect(asked(offer)).toBe('resume');
    expect(asked(go(offer, 'resume'))).toBe('shape');
    expect(asked(go(offer, ''))).toBe('shape');
    expect(go(offer, 'what?').session.note?.kind).toBe('error');
    const anew = go(offer, 'new');
    expect(asked(anew)).toBe('units');
    expect(anew.session.kept).toEqual({ shop: {}, parts: [] });
    expect(anew.effects).toEqual([]);
  });

  test('keeps the folders of its catalog', () => {
    const session = { ...begun().session, catalogs: ['/shop/catalog'] };
    expect(reread({ session, effects: [] }).session.catalogs).toEqual(['/shop/catalog']);
  });

  test('asks again for a machine that is not in the catalog any more', () => {
    const talk = go(begun(), 'mm', 'none');
    const kept = {
      ...talk.session.kept,
      shop: { ...talk.session.kept.shop, 'own-mill': { from: 'typed', value: 'oak' } },
    } as const;
    const again = reread({ session: { ...talk.session, kept }, effects: [] });
    expect(asked(again)).toBe('own-mill');
    expect(answers(again).shop.machine).toBe('unknown');
  });

  test('keeps answers to questions that are not asked any more', () => {
    const talk = go(begun(), 'mm');
    const kept = {
      ...talk.session.kept,
      shop: { ...talk.session.kept.shop, altitude: { from: 'typed', value: 300 } },
    } as const;
    const again = reread({ session: { ...talk.session, kept }, effects: [] });
    expect(again.session.kept).toEqual(kept);
  });
});

describe('a file that is none', () => {
  test.each([
    ['', 'no JSON'],
    ['{"format": "fivesides-session/1", "catalogs": [], "answers"', 'no JSON'],
    ['[]', 'holds no interview'],
    ['null', 'holds no interview'],
    ['{}', 'names no format'],
    [
      '{"format": "fivesides-session/1", "catalogs": [], "answers": {"shop": {"years": {"from": "typed", "value": 1e999}}, "parts": []}}',
      'too large',
    ],
    [
      '{"format": "fivesides-session/2"}',
      '"fivesides-session/2", and this version reads fivesides-session/1',
    ],
    ['{"format": "fivesides-answers/1"}', '"fivesides-answers/1"'],
    ['{"format": "fivesides-session/1"}', '"catalogs"'],
    ['{"format": "fivesides-session/1", "catalogs": [1]}', '"catalogs"'],
    ['{"format": "fivesides-session/1", "catalogs": [], "answers": []}', '"answers" are damaged'],
    [
      '{"format": "fivesides-session/1", "catalogs": [], "answers": {"shop": {"units": "mm"}, "parts": []}}',
      'damaged',
    ],
    ['{"format": "fivesides-session/1", "catalogs": [], "answers": {"shop": {}, "parts": [7]}}', 'damaged'],
  ])('is refused with the reason: %s', (file, why) => {
    const reading = readSaved(file);
    expect(reading.ok ? '' : reading.why).toContain(why);
  });

  test('values that no question knows are left out of the answers, and do no harm', () => {
    const shop = { units: { from: 'typed', value: { a: 1 } }, budget: { from: 'typed', value: -5 } };
    const parts = [
      { name: { from: 'typed', value: 7 }, size: { from: 'typed', value: [1, 2] }, __proto__: null },
    ];
    const reading = readSaved(
      JSON.stringify({ format: 'fivesides-session/1', catalogs: [], answers: { shop, parts } }),
    );
    if (!reading.ok) throw new Error(reading.why);
    const talk = { session: resumed(reading.saved, WORLD, [], null), effects: [] };
    expect(answers(talk).money.budget).toBe('unknown');
    expect(asked(talk)).toBe('units');
  });
});

test('an older format is brought up step by step', () => {
  const migrations: readonly Migration[] = [
    {
      from: 'fivesides-session/a',
      to: 'fivesides-session/b',
      migrate: ({ folders, ...rest }) => ({ ...rest, catalogs: folders }),
    },
    {
      from: 'fivesides-session/b',
      to: 'fivesides-session/1',
      migrate: (data) => ({ ...data, answers: { shop: {}, parts: [] } }),
    },
  ];
  const reading = readSaved('{"format": "fivesides-session/a", "folders": ["here"]}', migrations);
  expect(reading).toMatchObject({
    ok: true,
    saved: { catalogs: ['here'], answers: { shop: {}, parts: [] } },
  });
});
