import { describe, expect, test } from 'vitest';
import { QUESTIONS } from '../../src/questions/index.ts';
import { newSession } from '../../src/session/start.ts';
import {
  answers,
  asked,
  begun,
  blockReplies,
  go,
  oneBlock,
  SHOP_REPLIES,
  screen,
  type Talk,
  WORLD,
} from './talk.ts';

const back = { type: 'back' } as const;

describe('the way through', () => {
  test('goes from the units to the review, and asks nothing twice', () => {
    const seen: string[] = [];
    let talk = begun();
    for (const reply of ['mm', 'none', ...blockReplies('Lock gate hinge'), ...SHOP_REPLIES]) {
      seen.push(asked(talk));
      talk = go(talk, reply);
      expect(talk.session.note?.kind, `${seen.at(-1)}: ${reply}`).toBe(
        seen.at(-1) === 'parts' ? undefined : 'accepted',
      );
    }
    expect(asked(talk)).toBe('review');
    expect(new Set(seen).size).toBe(seen.length);
  });

  test('numbers every question that applies, and no other', () => {
    const talk = go(begun(), 'mm');
    const now = screen(talk);
    expect(now.kind === 'question' && now.progress.number).toBe(2);
    const done = screen(oneBlock());
    if (done.kind !== 'review') throw new Error('no review');
    const numbers = done.lines.map((line) => line.number);
    expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    expect(done.open).toBe(0);
  });

  test('asks only what applies: a disc needs no width, a part cut from the top alone no tilt', () => {
    const round = go(begun(), 'mm', 'none', 'Valve seat', 'round', '80');
    expect(asked(round)).toBe('length');
    const flat = go(begun(), 'mm', 'none', 'Cover', 'block', '90 x 60 x 5', 'brass', '', 'top', 'no');
    expect(asked(flat)).toBe('yearly-quantity');
  });

  test.each(['light', 'detailed'])('asks for the numbers of a cut only where it is detailed (%s)', (size) => {
    const talk = go(begun(), 'mm', 'none', ...blockReplies('A').slice(0, 18), size);
    expect(asked(talk)).toBe(size === 'light' ? 'drill' : 'cutter-diameter');
  });
});

describe('back', () => {
  test('goes from the review to the first question and loses nothing', () => {
    let talk = oneBlock();
    const before = answers(talk);
    const seen: string[] = [];
    for (let turn = 0; turn < 200 && asked(talk) !== 'units'; turn += 1) {
      talk = go(talk, back);
      seen.push(asked(talk));
    }
    expect(asked(talk)).toBe('units');
    const applies = WORLD.survey(talk.session.kept).items.filter((item) => item.applies).length;
    expect(seen.filter((id) => id !== 'parts')).toHaveLength(applies);
    expect(answers(talk)).toEqual(before);
    expect(go(talk, back).session.note).toEqual({ kind: 'said', words: 'This is the first question.' });
  });

  test('and forward again with Enter alone: everything is as it was', () => {
    let talk = oneBlock();
    const before = talk.session.kept;
    for (let turn = 0; turn < 200 && asked(talk) !== 'units'; turn += 1) talk = go(talk, back);
    for (let turn = 0; turn < 200 && asked(talk) !== 'review'; turn += 1) talk = go(talk, '');
    expect(talk.session.kept).toEqual(before);
  });

  test('leaves after a reply that was refused', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', 'block', 'huge');
    expect(talk.session.note?.kind).toBe('error');
    expect(asked(go(talk, back))).toBe('shape');
  });

  test('from the first question of a new part takes the part away again, since nothing was said of it', () => {
    const talk = go(begun(), 'mm', 'none');
    expect(asked(talk)).toBe('name');
    expect(asked(go(talk, back))).toBe('own-mill');
    expect(go(talk, back).session.kept.parts).toEqual([]);
  });
});

describe('answers that no longer apply', () => {
  const changed = (talk: Talk) => go(talk, { type: 'find', text: 'shape' }, 'round', '80', '120', 'upright');

  test('are kept, ignored, and marked so', () => {
    const talk = changed(oneBlock());
    expect(asked(talk)).toBe('review');
    expect(answers(talk).parts[0]).toMatchObject({
      shape: 'round',
      diameter: 80,
      size: ['unknown', 'unknown', 'unknown'],
    });
    const now = screen(talk);
    const line = now.kind === 'review' ? now.lines.find(({ title }) => title === 'Size') : undefined;
    expect(line).toMatchObject({ state: 'ignored', number: null, words: '90 x 60 x 55 mm' });
  });

  test('are there again once they apply again', () => {
    const talk = go(changed(oneBlock()), { type: 'find', text: 'shape' }, 'block');
    expect(answers(talk).parts[0]?.size).toEqual([90, 60, 55]);
    expect(asked(talk)).toBe('review');
  });

  test('that contradict an earlier answer are asked again', () => {
    const talk = go(oneBlock(), { type: 'find', text: 'shortest' }, '200');
    expect(asked(talk)).toBe('longest-tool');
    expect(answers(talk).tools).toMatchObject({ shortest: 200, longest: 'unknown' });
    expect(go(talk, '190').session.note).toMatchObject({ kind: 'error' });
    expect(answers(go(talk, '210')).tools.longest).toBe(210);
  });
});

describe('go to', () => {
  const find = (text: string) => ({ type: 'find', text }) as const;

  test('a question by number, by a word of its title, by the name of the part', () => {
    const talk = oneBlock();
    expect(asked(go(talk, find('4')))).toBe('shape');
    expect(asked(go(talk, find('tolerance')))).toBe('tolerance');
    expect(asked(go(talk, find('lock gate hinge')))).toBe('review');
    expect(asked(go(talk, find('Lock gate hinge: must')))).toBe('must');
    expect(asked(go(talk, find('lock gate hinge depth from the top')))).toBe('depth-top');
    expect(asked(go(talk, find('parts')))).toBe('parts');
  });

  test('back from what a changed answer has opened is to the question before it', () => {
    const needed: Talk = { session: newSession(WORLD, [], null, 'needed'), effects: [] };
    const talk = go(needed, 'mm', 'none', 'Hinge', 'block', '90 x 60 x 55', 'brass', 'top, sides');
    const changed = go(talk, { type: 'go', to: { at: 'result' } }, find('shape'), 'round', '80');
    expect(asked(changed)).toBe('length');
    expect(asked(go(changed, { type: 'back' }))).toBe('diameter');
    expect(asked(go(changed, { type: 'back' }, { type: 'back' }))).toBe('shape');
  });

  test('comes back after the answer', () => {
    expect(asked(go(oneBlock(), find('tolerance'), '0.1'))).toBe('review');
    expect(asked(go(begun(), 'mm', 'none', 'Hinge', 'block', find('mill'), 'yew'))).toBe('size');
  });

  test('open is the first open question', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', find('budget'), '1000');
    expect(asked(go(talk, find('open')))).toBe('shape');
  });

  test.each(['99', '0', 'nonsense', ''])('%j names nothing: it stays where it was and says so', (text) => {
    const talk = go(oneBlock(), find('tolerance'), find(text));
    expect(asked(talk)).toBe('tolerance');
    expect(talk.session.note?.kind).toBe('error');
  });

  test('a question that does not apply is refused', () => {
    const talk = go(oneBlock(), { type: 'go', to: { at: 'question', id: 'nonsense', subject: null } });
    expect(talk.session.note?.kind).toBe('error');
  });
});

test('every question that is asked takes not sure, and every one of them is asked somewhere', () => {
  const seen = new Set<string>();
  for (const [shape, approaches, motion, cut, drill, lifting] of [
    ['not sure', '1, 2, 3, 4, 5', 'simultaneous', 'detailed', 'yes', 'hand, hoist, forklift'],
    ['not sure', 'not sure', 'not sure', 'not sure', 'not sure', 'not sure'],
  ] as const) {
    const said: Readonly<Record<string, string>> = {
      ...{ shape, approaches, motion, cut, drill, 'lifting-means': lifting },
      parts: 'go on',
    };
    let talk = begun();
    for (let turn = 0; turn < 200 && asked(talk) !== 'review'; turn += 1) {
      const id = asked(talk);
      seen.add(id);
      talk = go(talk, said[id] ?? 'not sure');
      expect(talk.session.note?.kind, id).not.toBe('error');
    }
    expect(asked(talk)).toBe('review');
  }
  expect(QUESTIONS.map(({ id }) => id).filter((id) => !seen.has(id))).toEqual([]);
});
