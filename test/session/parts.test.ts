import { describe, expect, test } from 'vitest';
import {
  answers,
  asked,
  begun,
  blockReplies,
  go,
  live,
  oneBlock,
  SHOP_REPLIES,
  screen,
  type Talk,
} from './talk.ts';

const PARTS = { type: 'go', to: { at: 'parts' } } as const;
const atParts = (): Talk => go(begun(), 'mm', 'none', ...blockReplies('Lock gate hinge'));
const names = (talk: Talk) => answers(talk).parts.map(({ name }) => name);

describe('the list of parts', () => {
  test('comes after the last question about a part and sums the parts up', () => {
    const now = screen(atParts());
    expect(now.kind === 'parts' && now.parts).toEqual([
      {
        name: 'Lock gate hinge',
        summary: 'block, 90 x 60 x 55 mm, wrought aluminum, top, sides',
        open: 0,
      },
    ]);
  });

  test('any number of parts can be added one after the other', () => {
    let talk = atParts();
    for (const name of ['Valve body', 'Rudder pintle', 'Cleat'])
      talk = go(talk, 'add', ...blockReplies(name));
    expect(names(talk)).toEqual(['Lock gate hinge', 'Valve body', 'Rudder pintle', 'Cleat']);
    expect(asked(talk)).toBe('parts');
    expect(asked(go(talk, ...SHOP_REPLIES))).toBe('review');
  });

  test('gone to from a later question leads back there', () => {
    const talk = go(atParts(), 'go on', '90');
    expect(asked(talk)).toBe('longest-tool');
    expect(asked(go(talk, PARTS, 'go on'))).toBe('longest-tool');
    expect(asked(go(talk, PARTS, 'add', ...blockReplies('Cleat')))).toBe('parts');
    expect(asked(go(talk, PARTS, 'add', ...blockReplies('Cleat'), ''))).toBe('longest-tool');
  });

  test.each(['copy 9', 'edit', 'remove Cleat', 'dance', 'copy 0'])(
    '%j is answered with what can be typed',
    (text) => {
      const two = go(atParts(), 'add', ...blockReplies('Valve body'));
      const talk = go(two, text);
      expect(talk.session.note).toMatchObject({ kind: 'error', typed: text });
      expect(asked(talk)).toBe('parts');
    },
  );
});

describe('a copy', () => {
  test('has every answer but the name; its answers are shown to be changed', () => {
    const talk = go(atParts(), 'copy 1');
    expect(asked(talk)).toBe('name');
    const named = go(talk, 'Wide hinge');
    const now = screen(named);
    expect(now.kind === 'review' && now.part).toBe('Wide hinge');
    expect(answers(named).parts[1]).toEqual({ ...answers(named).parts[0], name: 'Wide hinge' });
  });

  test('is changed without touching the part it was copied from', () => {
    const talk = go(atParts(), 'copy Lock gate hinge', 'Wide hinge', 'size', '120 x 60 x 55', '');
    expect(asked(talk)).toBe('parts');
    expect(answers(talk).parts.map(({ size }) => size[0])).toEqual([90, 120]);
  });

  test('cannot have the name of another part', () => {
    const talk = go(atParts(), 'copy', 'lock gate hinge');
    expect(talk.session.note).toMatchObject({ kind: 'error', why: expect.stringContaining('already') });
    expect(asked(talk)).toBe('name');
  });

  test('not sure gives it a name of its own', () => {
    expect(names(go(atParts(), 'copy 1', 'not sure'))).toEqual(['Lock gate hinge', 'Part 2']);
  });
});

describe('a part', () => {
  test('is edited answer by answer; what a change opens is asked', () => {
    const talk = go(atParts(), 'edit 1', 'shape', 'round');
    expect(asked(talk)).toBe('diameter');
    const done = go(talk, '80', '120', 'upright');
    expect(asked(done)).toBe('review');
    expect(asked(go(done, ''))).toBe('parts');
  });

  test('is renamed', () => {
    const talk = go(atParts(), 'rename 1', 'Sluice hinge');
    expect(names(talk)).toEqual(['Sluice hinge']);
    expect(asked(talk)).toBe('parts');
  });

  test('is removed once that is confirmed, and nothing else with it', () => {
    const two = go(atParts(), 'add', ...blockReplies('Valve body'));
    const question = go(two, 'remove 1');
    expect(asked(question)).toBe('remove');
    expect(names(go(question, 'no'))).toEqual(['Lock gate hinge', 'Valve body']);
    const removed = go(question, 'yes');
    expect(names(removed)).toEqual(['Valve body']);
    expect(answers(removed).parts[0]).toEqual(answers(two).parts[1]);
    expect(asked(removed)).toBe('parts');
    expect(removed.effects.at(-1)).toEqual({ kind: 'save' });
  });

  test('that is the last one makes room for the next when it is removed', () => {
    const talk = go(oneBlock(), PARTS, 'remove', 'yes');
    expect(asked(talk)).toBe('name');
    expect(names(talk)).toEqual(['Part 1']);
  });

  test('removed in the middle leaves the interview where it was', () => {
    const three = go(atParts(), 'add', ...blockReplies('B'), 'add', ...blockReplies('C').slice(0, 4));
    expect(asked(three)).toBe('mass');
    const talk = go(three, PARTS, 'remove 1', 'yes', '');
    expect(asked(talk)).toBe('mass');
    expect(talk.session.at).toMatchObject({ subject: 1 });
  });
});

describe('the field of arrangements', () => {
  test('is judged from the first size on, and says what dropped how many', () => {
    const named = go(begun(), 'mm', 'none', 'Hinge', 'block');
    expect(live(named)).toBeNull();
    const sized = go(named, '110 x 60 x 55');
    expect(live(sized)).toMatchObject({
      left: 9,
      total: 12,
      leftBefore: null,
      dropped: { check: 'swing', count: 3 },
    });
    const same = go(sized, 'brass');
    expect(live(same)).toMatchObject({ left: 9, leftBefore: 9, dropped: null, newLeader: null });
    const wider = go(same, { type: 'find', text: 'size' }, '170 x 60 x 55');
    expect(live(wider)).toMatchObject({
      left: 6,
      leftBefore: 9,
      dropped: { check: 'swing', count: 3 },
    });
    const back = go(wider, { type: 'find', text: 'size' }, '20 x 20 x 20');
    expect(live(back)).toMatchObject({
      left: 12,
      leftBefore: 6,
      dropped: null,
      newLeader: { machine: 'Rowan', rotary: 'Wren' },
    });
  });

  test('leaves out a part whose size was not asked yet, and takes one in whose size is not sure', () => {
    const talk = go(atParts(), 'add', 'Valve body');
    expect(live(talk)).toMatchObject({ left: 12, leftBefore: 12 });
    expect(live(go(talk, 'block', 'not sure'))).toMatchObject({ total: 12 });
  });

  test('is not judged while no part was asked for its size', () => {
    expect(live(go(begun(), 'mm', 'none', 'Hinge', 'block'))).toBeNull();
    const talk = go(begun(), 'mm', 'none', 'Hinge', 'block', { type: 'go', to: { at: 'result' } });
    expect(talk.session.note).toMatchObject({ kind: 'error', why: expect.stringContaining('needs a size') });
  });

  test('is judged where nobody is sure of a size: that is an answer', () => {
    const talk = go(begun(), 'mm', 'none', 'Hinge', 'block', 'not sure');
    expect(live(talk)).not.toBeNull();
    expect(go(talk, { type: 'go', to: { at: 'result' } }).session.at).toEqual({ at: 'result' });
  });
});
