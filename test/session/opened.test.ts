import { describe, expect, test } from 'vitest';
import { decide } from '../../src/rules/decide.ts';
import { opened } from '../../src/session/opened.ts';
import { readSaved, savedOf } from '../../src/session/saved.ts';
import type { Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { createWorld } from '../../src/session/world.ts';
import { demoAnswers, demoCatalog, demoShops } from '../catalog-demo/demo.ts';

const world = createWorld(demoCatalog(), decide);

const open = (name: string): Session => opened(demoAnswers(name), newSession(world, [], null, 'all'), world);
const answersOf = ({ kept }: Session) => world.survey(kept).answers;
const all = (session: Session, ...events: Parameters<typeof step>[1][]): Session =>
  events.reduce((now, event) => step(now, event, world)[0], session);

describe.each(demoShops())('%s opened', (name) => {
  test('says what the file says, to the last number', () => {
    expect(answersOf(open(name))).toEqual(demoAnswers(name).answers);
  });

  test('has no question open', () => {
    expect(
      world.survey(open(name).kept).items.filter(({ applies, given }) => applies && given === undefined),
    ).toEqual([]);
  });

  test('is the same after it was saved and read again', () => {
    const session = open(name);
    const saved = readSaved(JSON.stringify(savedOf(session)));
    expect(saved.ok && saved.saved.answers).toEqual(session.kept);
  });
});

describe('going on from a file', () => {
  const go = (id: string, subject: number | null) =>
    ({ type: 'go', to: { at: 'question', id, subject } }) as const;

  test('an answer that is changed takes the place of the file’s, and nothing else moves', () => {
    const before = answersOf(open('shop'));
    const after = answersOf(all(open('shop'), go('tolerance', 2), { type: 'reply', text: '0.02' }));
    const [, , changed] = before.parts;
    if (changed === undefined) throw new Error('no third part');
    expect(after).toEqual({ ...before, parts: before.parts.with(2, { ...changed, tolerance: 0.02 }) });
  });

  test('not sure takes the place of what the file says', () => {
    const session = all(open('shop'), go('tolerance', 2), { type: 'not-sure' });
    expect(answersOf(session).parts[2]?.tolerance).toBe('unknown');
  });

  test('a copy has what no question asks, a new part has none of it, and a part taken out is gone', () => {
    const at = { ...open('shop'), at: { at: 'parts' } as const };
    const fills = (session: Session) => answersOf(session).parts.map(({ fill }) => fill);
    const before = fills(at);
    expect(fills(all(at, { type: 'copy-part', part: 1 }))).toEqual([...before, before[1]]);
    expect(fills(all(at, { type: 'add-part' }))).toEqual([...before, 1]);
    expect(fills(all(at, { type: 'remove-part', part: 0 }, { type: 'reply', text: 'yes' }))).toEqual(
      before.slice(1),
    );
  });
});

describe('a saved interview whose file is damaged', () => {
  const text = JSON.stringify(savedOf(open('shop')));
  test.each([
    ['no text', (base: { text: unknown }) => ({ ...base, text: 7 })],
    ['no answers file', (base: { text: unknown }) => ({ ...base, text: 'parts: [' })],
    ['a part too many', (base: { parts: number[] }) => ({ ...base, parts: [...base.parts, 0] })],
    ['a part that is not there', (base: { parts: number[] }) => ({ ...base, parts: base.parts.with(0, 99) })],
  ] as const)('%s: is refused by name', (_, damage) => {
    const data = JSON.parse(text);
    data.answers.base = damage(data.answers.base);
    expect(readSaved(JSON.stringify(data))).toEqual({
      ok: false,
      why: 'the answers file that it goes on from is damaged',
    });
  });
});
