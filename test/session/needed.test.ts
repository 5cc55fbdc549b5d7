import { describe, expect, test } from 'vitest';
import { becauseLine } from '../../src/report/asking-words.ts';
import { allQuestions } from '../../src/session/all-questions.ts';
import { readSaved, savedOf } from '../../src/session/saved.ts';
import { type Screen, screenOf } from '../../src/session/screen.ts';
import type { Event, Session } from '../../src/session/session.ts';
import { resumed } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { fakeAsk } from './fake-asking.ts';
import { BASICS, begun, go, PART, WORLD, worldWith } from './needed-talk.ts';

const at = ({ at: place }: Session): string => (place.at === 'question' ? place.id : place.at);
const screen = (session: Session): Screen => screenOf(session, WORLD);
const because = (session: Session): string | null => {
  const now = screen(session);
  return now.kind === 'question' && now.because !== null ? becauseLine(now.because) : null;
};

const settled = (): Session => go(begun(), WORLD, ...BASICS);
const back = { type: 'back' } as const;
const find = (text: string): Event => ({ type: 'find', text });

describe('where only what is needed is asked', () => {
  test('basic facts come first, in their order, with the list of parts after those of the parts', () => {
    const seen: string[] = [];
    let session = begun();
    for (const reply of BASICS) {
      seen.push(at(session));
      session = go(session, WORLD, reply);
      expect(session.note?.kind, seen.at(-1)).not.toBe('error');
    }
    expect(seen).toEqual([
      ...['units', 'own-mill', 'name', 'shape', 'size', 'approaches', 'parts'],
      ...['ceiling', 'doorway-width', 'doorway-height'],
    ]);
  });

  test('then what the engine names, in its order, and the screen says why', () => {
    const first = settled();
    expect(at(first)).toBe('budget');
    expect(because(first)).toBe(
      'Asked now because it may drop 14 of the 31 arrangements that may still win.',
    );
    const second = go(first, WORLD, '200000');
    expect(at(second)).toBe('tolerance');
    expect(because(second)).toBe('Asked now because this alone can still change the result.');
    expect(at(go(second, WORLD, '0.05'))).toBe('review');
  });

  test('nothing is asked any more once the result stands', () => {
    const done = go(settled(), WORLD, '500000');
    expect(at(done)).toBe('review');
    const now = screen(done);
    if (now.kind !== 'review') throw new Error('no review');
    expect(now.open).toBe(0);
    expect(now.settled).toEqual({ outcome: 'recommended', isProven: true, byFew: false });
    const tolerance = now.lines.find(({ title }) => title === 'Tolerance');
    expect(tolerance).toMatchObject({ state: 'not asked', readBy: ['index-accuracy'] });
    expect(tolerance?.taken).toBeNull();
    expect(now.lines.find(({ title }) => title === 'Mass')).toMatchObject({
      state: 'not asked',
      taken: 'worked out from size and material, as if it were solid',
    });
    expect(because(go(done, WORLD, find('mass')))).toContain('Another value may change the result.');
    expect(now.lines.find(({ title }) => title === 'Size')?.state).toBe('typed');
    const listed = allQuestions(done, WORLD).find(({ title }) => title === 'Tolerance');
    expect(listed?.state).toBe('not asked');
  });

  test('while something is still asked, nothing is said to be settled for good', () => {
    const now = screen(go(settled(), WORLD, { type: 'go', to: { at: 'review', part: null } }));
    if (now.kind !== 'review') throw new Error('no review');
    expect(now.settled).toEqual({ outcome: 'open', isProven: false, byFew: false });
    expect(now.open).toBe(2);
    const there = go(settled(), WORLD, find('floor'));
    expect(because(there)).toBe(
      'It would not be asked by itself as things stand: nothing that is open hangs on it.',
    );
  });

  test('where what an open check hangs on most stays open, what else it reads is asked', () => {
    const world = worldWith((...from) => {
      const found = fakeAsk(...from);
      return found === 'later' ? found : { ...found, openChecks: ['air'] };
    });
    const open = go(begun(world), world, ...BASICS, '200000', '0.05');
    expect(at(open)).toBe('air-flow');
    expect(at(go(open, world, 'not sure'))).toBe('air-pressure');
    expect(at(go(open, world, 'not sure', 'not sure'))).toBe('review');
  });

  test('how far it is: basic facts that are open, then what can still change the result', () => {
    const needed = (session: Session) => {
      const now = screen(session);
      return now.kind === 'question' ? now.progress.needed : undefined;
    };
    expect(needed(begun())).toEqual({ answered: 0, toAsk: null, isBasic: true, byFew: false });
    expect(needed(go(begun(), WORLD, ...BASICS.slice(0, 3)))).toEqual({
      answered: 3,
      toAsk: 8,
      isBasic: true,
      byFew: false,
    });
    expect(needed(settled())).toEqual({ answered: 9, toAsk: 2, isBasic: false, byFew: false });
  });

  test('what is left open is not asked again', () => {
    expect(at(go(settled(), WORLD, 'not sure'))).toBe('tolerance');
    expect(at(go(settled(), WORLD, 'not sure', 'not sure'))).toBe('review');
  });

  test('what would not be asked can be answered all the same, and its screen says that it changes nothing', () => {
    const there = go(settled(), WORLD, '500000', find('tolerance'));
    expect(at(there)).toBe('tolerance');
    expect(because(there)).toContain(
      'it cannot change the result any more, since the recommendation is the same',
    );
    const answered = go(there, WORLD, '0.07');
    expect(at(answered)).toBe('review');
    expect(answered.kept.parts[0]?.tolerance).toEqual({ from: 'typed', value: 0.07 });
  });

  test('open is the next question that matters, and without one any that is open', () => {
    expect(at(go(settled(), WORLD, { type: 'go', to: { at: 'review', part: null } }, find('open')))).toBe(
      'budget',
    );
    expect(at(go(settled(), WORLD, '500000', find('open')))).toBe('material');
  });

  test('without a size there is no basis: what is open is asked in the fixed order', () => {
    const unsized = BASICS.with(4, 'not sure');
    const session = go(begun(), WORLD, ...unsized);
    expect(at(session)).toBe('material');
    expect(because(session)).toBeNull();
    expect(at(go(session, WORLD, 'wrought aluminum'))).toBe('mass');
  });

  test('an answer that contradicts another is asked again before anything else', () => {
    const session = go(settled(), WORLD, find('shortest'), '100', find('longest'), '150', find('shortest'));
    expect(at(go(session, WORLD, '200'))).toBe('longest-tool');
  });
});

describe('back', () => {
  test('leads the way that was gone, and forward again to where it was', () => {
    const there = go(settled(), WORLD, '200000');
    const seen: string[] = [];
    let session = there;
    for (let turn = 0; turn < 30 && at(session) !== 'units'; turn += 1) {
      session = go(session, WORLD, back);
      seen.push(at(session));
    }
    expect(seen.slice(0, 6)).toEqual([
      ...['budget', 'doorway-height', 'doorway-width', 'ceiling', 'parts', 'approaches'],
    ]);
    expect(session.kept).toEqual(there.kept);
    expect(at(go(session, WORLD, ''))).toBe('tolerance');
    expect(go(session, WORLD, back).note).toEqual({ kind: 'said', words: 'This is the first question.' });
  });

  test('after going on with a saved interview leads through what was answered, in the fixed order', () => {
    const read = readSaved(JSON.stringify(savedOf(go(settled(), WORLD, '200000'))));
    if (!read.ok) throw new Error(read.why);
    const session = resumed(read.saved, WORLD, [], null);
    expect(at(session)).toBe('tolerance');
    expect(at(go(session, WORLD, back))).toBe('budget');
    expect(at(go(session, WORLD, back, back, back))).toBe('doorway-width');
  });
});

describe('parts', () => {
  test('another one is asked for its basic facts, then which of them must be held, then its list comes again', () => {
    const first = go(begun(), WORLD, ...BASICS.slice(0, 6));
    expect(at(first)).toBe('parts');
    const second = go(first, WORLD, { type: 'add-part' }, 'Cover', ...PART.slice(1));
    expect(second.at).toEqual({ at: 'question', id: 'must', subject: 0 });
    const both = go(second, WORLD, 'yes');
    expect(both.at).toEqual({ at: 'question', id: 'must', subject: 1 });
    expect(at(go(both, WORLD, 'no'))).toBe('parts');
    expect(at(go(both, WORLD, 'no', 'go on'))).toBe('ceiling');
  });

  test('one that is taken out takes its questions out of the way back', () => {
    const two = go(begun(), WORLD, ...BASICS.slice(0, 6), { type: 'add-part' }, 'Cover', 'block');
    const gone = go(two, WORLD, { type: 'remove-part', part: 0 }, 'yes');
    expect(gone.trail.filter((place) => place.at === 'question' && place.subject === 0)).toEqual([
      { at: 'question', id: 'name', subject: 0 },
      { at: 'question', id: 'shape', subject: 0 },
    ]);
  });
});

describe('the switch', () => {
  const ask = (asks: 'all' | 'needed' | null): Event => ({ type: 'ask', asks });

  test('asks everything in the fixed order from where it stands, and only what is needed again', () => {
    const all = go(settled(), WORLD, ask('all'));
    expect(at(all)).toBe('budget');
    expect(at(go(all, WORLD, '500000'))).toBe('shop-rate');
    expect(at(go(all, WORLD, '500000', ask(null), '70'))).toBe('review');
  });

  test('is saved; a file that does not say it asks what is needed', () => {
    const saved = savedOf(go(settled(), WORLD, ask('all')));
    expect(readSaved(JSON.stringify(saved))).toMatchObject({ ok: true, saved: { asks: 'all' } });
    const { asks: _, ...old } = saved;
    expect(readSaved(JSON.stringify(old))).toMatchObject({ ok: true, saved: { asks: 'needed' } });
  });

  test('saves at once, unless nothing is answered yet', () => {
    expect(step(settled(), ask('all'), WORLD)[1]).toEqual([{ kind: 'save' }]);
    expect(step(begun(), ask('all'), WORLD)[1]).toEqual([]);
  });
});

describe('while it is being worked out what to ask next', () => {
  test('it waits there with the answer kept, and goes on once it is known', () => {
    let known = false;
    const world = worldWith((...from) => (known ? fakeAsk(...from) : 'later'));
    const last: Event = { type: 'reply', text: '2.4 m' };
    const [waits, effects] = step(go(begun(world), world, ...BASICS.slice(0, -1)), last, world);
    expect(at(waits)).toBe('next');
    expect(effects).toEqual([{ kind: 'save' }]);
    expect(waits.kept.shop['doorway-height']).toBeDefined();
    expect(at(go(waits, world, { type: 'next' }))).toBe('next');
    expect(at(go(waits, world, back))).toBe('doorway-height');
    known = true;
    const [next, saves] = step(waits, { type: 'next' }, world);
    expect(at(next)).toBe('budget');
    expect(saves).toEqual([{ kind: 'save' }]);
    // what the answer brought about is still said
    expect(next.note).toMatchObject({ kind: 'accepted', id: 'doorway-height' });
  });
});
