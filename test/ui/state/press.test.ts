import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { screenOf } from '../../../src/session/screen.ts';
import { walkOf } from '../../../src/session/walk.ts';
import { itemsOf } from '../../../src/ui/state/items.ts';
import { beginning, type Ui } from '../../../src/ui/state/ui.ts';
import { begun, oneBlock, WORLD } from '../../session/talk.ts';
import { goneTo } from '../every-screen.ts';
import { after, control, KEY, pressing } from '../pressing.ts';

const blank = (): Ui => beginning(begun().session, null);
/** One part, every question answered; at the review. */
const answered = (): Ui => beginning(oneBlock().session, null);
const placeOf = (ui: Ui): string => {
  const screen = screenOf(ui.session, WORLD);
  return screen.kind === 'question' ? screen.id : screen.kind;
};
const at = (id: string, subject: number | null = 0): Ui =>
  goneTo(answered(), { at: 'question', id, subject }, WORLD);
const press = (ui: Ui, ...writes: readonly string[]): Ui => after(ui, WORLD, ...writes);
const givenOf = (ui: Ui, id: string) => ui.session.kept.parts[0]?.[id] ?? ui.session.kept.shop[id];

describe('requirement 8: a run of keys in one write does what the same keys do one by one', () => {
  test.each([
    ['five rows down', 'material', KEY.down.repeat(5)],
    ['two down and taken', 'material', `${KEY.down}${KEY.down}\r`],
    ['a number and Enter', 'tolerance', '0.07\r'],
    ['typed and taken back', 'tolerance', `123${KEY.backspace}${KEY.backspace}`],
  ])('%s', (_, id, run) => {
    const start = at(id);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: an arrow is one key
    const keys = run.match(/\u001b\[[A-Z]|[^\u001b]/g) ?? [];
    expect(press(start, run)).toEqual(press(start, ...keys));
    expect(press(start, run)).not.toEqual(start);
  });

  test('two down and Enter takes the third', () => {
    const start = { ...at('material'), mark: 0 };
    const third = itemsOf(start, WORLD)?.[2]?.key;
    const done = press(start, `${KEY.down}${KEY.down}\r`);
    expect(givenOf(done, 'material')).toEqual({ from: 'typed', value: third });
  });

  test('thirty keys in one write end where thirty writes end', () => {
    const keys = Array.from({ length: 30 }, (_, index) => (index % 3 === 2 ? KEY.up : KEY.down));
    expect(press(at('material'), keys.join(''))).toEqual(press(at('material'), ...keys));
  });
});

describe('requirement 9: a paste answers one question only', () => {
  test('a number with its unit, bracketed, then Enter', () => {
    const done = press(at('tolerance'), '\u001b[200~0,07 mm\r\n\u001b[201~');
    expect(placeOf(done)).toBe('tolerance');
    expect(done.field.text).toBe('0,07 mm');
    expect(givenOf(press(done, '\r'), 'tolerance')).toEqual({ from: 'typed', value: 0.07 });
  });

  test('without brackets it ends as the same number', () => {
    expect(givenOf(press(at('tolerance'), '0,07 mm\r\n'), 'tolerance')).toEqual({
      from: 'typed',
      value: 0.07,
    });
  });

  test('several lines leave the next question alone', () => {
    const done = press(blank(), '\r');
    const next = press(done, '\u001b[200~one\ntwo\nthree\u001b[201~');
    expect(placeOf(next)).toBe(placeOf(done));
    expect(next.session.kept).toEqual(done.session.kept);
    expect(next.said).toBe('Several lines came at once: they answer nothing here.');
    const typed = press(at('tolerance'), '\u001b[200~0,07\n0,08\u001b[201~');
    expect(typed.said).toContain('the first is typed here, the others are left out');
  });

  test('what is too long for an answer, or for a paste, is refused in words and not cut', () => {
    const line = press(at('tolerance'), '1', `\u001b[200~${'9'.repeat(500)}\u001b[201~`);
    expect([line.field.text, line.said]).toEqual([
      '1',
      'There is room for 500 characters: nothing more is typed.',
    ]);
    const full = press(at('tolerance'), `\u001b[200~${'9'.repeat(500)}\u001b[201~`, '1');
    expect([full.field.text.length, full.said?.includes('room for 500')]).toEqual([500, true]);
    const start = at('tolerance');
    const paste = press(start, `\u001b[200~${'9\r'.repeat(60_000)}\u001b[201~`);
    expect(paste.session.kept).toBe(start.session.kept);
    expect([paste.field.text, placeOf(paste)]).toEqual(['', 'tolerance']);
    expect(paste.said).toContain('longer than 100 000 characters: nothing of it is taken');
  });
});

describe('requirement 10: Escape discards no answer', () => {
  test('it takes away what is typed first, then goes back', () => {
    const typing = press(at('tolerance'), '0.09');
    const cleared = press(typing, KEY.escape);
    expect([placeOf(cleared), cleared.field.text]).toEqual(['tolerance', '']);
    expect(cleared.session.kept).toEqual(typing.session.kept);
    const back = press(cleared, KEY.escape);
    expect([placeOf(back), back.session.kept]).toEqual(['review', typing.session.kept]);
  });
});

describe('requirements 11 and 15: back, from any question to the first', () => {
  test.each([
    ['←', KEY.left],
    ['Shift-Tab', KEY.shiftTab],
    ['Escape', KEY.escape],
  ])('with %s, and every answer stays', (_, key) => {
    const start = answered();
    const walk = walkOf(start.session.kept, WORLD);
    let now = start;
    for (const _each of walk) now = press(now, key);
    expect(placeOf(now)).toBe('units');
    expect(now.session.kept).toEqual(start.session.kept);
    expect(press(now, key).session.note).toMatchObject({ kind: 'said' });
  });

  test('Shift-Tab leaves a text that is no answer', () => {
    const left = press(at('tolerance'), 'rubbish', KEY.shiftTab);
    expect([placeOf(left), left.field.text]).toEqual(['review', '']);
  });

  test('an answer that a change makes impossible is kept and marked, not deleted', () => {
    const start = at('shape');
    const before = givenOf(start, 'size');
    const round = (itemsOf(start, WORLD) ?? []).findIndex(({ key }) => key === 'round');
    const changed = press({ ...start, mark: round }, '\r');
    expect(givenOf(changed, 'shape')).toEqual({ from: 'typed', value: 'round' });
    expect(givenOf(changed, 'size')).toEqual(before);
    const review = screenOf({ ...changed.session, at: { at: 'review', part: null } }, WORLD);
    expect(review.kind === 'review' && review.lines.find(({ title }) => title === 'Size')?.state).toBe(
      'ignored',
    );
  });
});

describe('requirement 12: jump', () => {
  test('/ and g open the list of all questions, with how each stands', () => {
    const list = itemsOf(press(at('tolerance'), '/'), WORLD) ?? [];
    const states = new Set(list.map(({ state }) => state));
    expect(list).toHaveLength(WORLD.survey(answered().session.kept).items.length);
    expect([...states].sort()).toEqual(['answered', 'does not apply', 'usual']);
    expect(press(at('material'), 'g').over).toEqual({ kind: 'jump' });
    expect(press(at('tolerance'), control('g')).over).toEqual({ kind: 'jump' });
  });

  test('every question that applies is reached in at most four keys and words of its title', () => {
    const start = at('material');
    const list = itemsOf(press(start, 'g'), WORLD) ?? [];
    for (const { label, state, act } of list) {
      if (state === 'does not apply' || act.do !== 'event' || act.event.type !== 'go') continue;
      const found = press(start, 'g', label);
      const rows = (itemsOf(found, WORLD) ?? []).findIndex((each) => each.label === label);
      expect([label, rows <= 2]).toEqual([label, true]);
      const there = press(found, KEY.down.repeat(rows), '\r');
      expect(there.session.at).toEqual(act.event.to);
      expect(there.over).toBeNull();
    }
  });

  test('what does not apply says so and stays', () => {
    const start = press(at('material'), 'g', 'undercut angle');
    const there = press(start, '\r');
    expect(there.said).toContain('does not apply');
    expect(there.session.at).toEqual(start.session.at);
  });

  test('letters are typed into the filter, whatever they do elsewhere', () => {
    const start = press(at('material'), 'g');
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z?/ 0-9]{1,8}$/), (text) => {
        const now = press(start, text);
        expect([now.field.text, now.over?.kind, now.session]).toEqual([text, 'jump', start.session]);
      }),
      { numRuns: 50 },
    );
  });
});

describe('requirement 16: the review', () => {
  test('names every answer that applies, its unit and where it comes from', () => {
    const list = itemsOf(answered(), WORLD) ?? [];
    const tolerance = list.find(({ label }) => label.includes('Tolerance'));
    expect([tolerance?.label, tolerance?.state]).toEqual(['Lock gate hinge: Tolerance: 0.05 mm', 'typed']);
    expect(list.some(({ state }) => state === 'usual')).toBe(true);
  });

  test('Enter asks a question again and comes back to its row', () => {
    const start = answered();
    const row = (itemsOf(start, WORLD) ?? []).findIndex(({ label }) => label.includes('Tolerance'));
    const asked = press({ ...start, mark: row }, '\r');
    expect(placeOf(asked)).toBe('tolerance');
    const back = press(asked, '0.07\r');
    expect([placeOf(back), back.mark]).toEqual(['review', row]);
    expect(itemsOf(back, WORLD)?.[row]?.label).toContain('0.07 mm');
  });
});

describe('requirement 17: undo', () => {
  const changes = (ui: Ui, count: number): Ui => {
    let now = ui;
    for (let index = 1; index <= count; index += 1) {
      now = press(goneTo(now, { at: 'question', id: 'tolerance', subject: 0 }, WORLD), `0.${100 + index}\r`);
    }
    return now;
  };

  test('takes back every change, one by one, and says in words what each answer is again', () => {
    let now = changes(answered(), 25);
    for (let index = 24; index >= 1; index -= 1) {
      now = press(now, control('u'));
      expect(givenOf(now, 'tolerance')).toEqual({ from: 'typed', value: (100 + index) / 1000 });
      const words = `Lock gate hinge: Tolerance is ${(100 + index) / 1000} mm again, it was ${(101 + index) / 1000} mm.`;
      expect([placeOf(now), now.said]).toEqual(['tolerance', words]);
    }
    now = press(now, control('u'));
    expect(now.said).toBe('Lock gate hinge: Tolerance is 0.05 mm again, it was 0.101 mm.');
    expect(press(now, control('u')).said).toBe('There is nothing to take back.');
  });

  test('also after a jump, and asks for the answers to be saved', () => {
    const start = answered();
    const changed = press(changes(start, 1), 'g', 'units\r');
    expect(placeOf(changed)).toBe('units');
    const [undone, requests] = pressing(changed, WORLD, 'u');
    expect(undone.session.kept).toEqual(start.session.kept);
    expect(requests).toEqual([{ kind: 'effect', effect: { kind: 'save' } }]);
  });

  test('where something is typed the key clears that and no answer', () => {
    const typing = press(changes(answered(), 1), '');
    const now = press(
      goneTo(typing, { at: 'question', id: 'tolerance', subject: 0 }, WORLD),
      '5',
      control('u'),
    );
    expect([now.field.text, givenOf(now, 'tolerance')]).toEqual(['', { from: 'typed', value: 0.101 }]);
  });
});

describe('leaving', () => {
  test('Ctrl-C asks once, another key goes on, the second leaves', () => {
    const once = press(at('tolerance'), '0.0', control('c'));
    expect(once.over).toEqual({ kind: 'leave', under: null });
    expect([press(once, '7').over, press(once, '7').field.text]).toEqual([null, '0.07']);
    expect(pressing(once, WORLD, control('c'))[1]).toEqual([{ kind: 'leave', how: 'interrupted' }]);
  });
});

test('whatever is looked at, moved to, typed or gone back from, no answer changes without Enter', () => {
  const key = fc.constantFrom(
    ...Object.values(KEY).filter((each) => each !== KEY.enter),
    ...'fgopqrwyz?/ 1259',
    control('g'),
    control('r'),
    control('p'),
    control('y'),
    '\u001b[200~12 mm\r\n\u001b[201~',
  );
  const start = answered();
  fc.assert(
    fc.property(fc.array(key, { maxLength: 30 }), (keys) => {
      expect(press(start, ...keys).session.kept).toEqual(start.session.kept);
    }),
    { numRuns: 60 },
  );
});
