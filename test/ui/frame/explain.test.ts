import { describe, expect, test } from 'vitest';
import type { World } from '../../../src/session/world.ts';
import { frame } from '../../../src/ui/frame/frame.ts';
import { textOfRow } from '../../../src/ui/look/row.ts';
import type { Ui } from '../../../src/ui/state/ui.ts';
import { demoUi, demoWorld } from '../demo-screens.ts';
import { goneTo, typed } from '../every-screen.ts';
import { KEY, after as pressed } from '../pressing.ts';

const world: World = demoWorld('shop');
const start = demoUi('shop', world);
const result = goneTo(start, { at: 'result' }, world);

const seen = (ui: Ui): string =>
  frame(
    ui,
    { columns: 100, rows: 40 },
    { world, ascii: false, color: false, sessionFile: 'x', unsaved: null },
  )
    .map(textOfRow)
    .join('\n');

describe('one key from a verdict to what it means', () => {
  test('in the list of checks the checks come first, with their verdicts', () => {
    const list = seen(pressed(result, world, 'w', 'e'));
    expect(list).toContain('What does it mean?');
    expect(list.split('\n').find((line) => line.includes('holds'))).toMatch(/\([a-z-]+\)/);
  });

  test('Enter explains the first of them, Esc goes back to the list, Esc again to the checks', () => {
    const explained = pressed(result, world, 'w', 'e', KEY.enter);
    expect(explained.over).toMatchObject({ kind: 'explained' });
    expect(seen(explained)).toContain('THE RULE');
    const back = pressed(explained, world, KEY.escape);
    expect(back.over).toEqual({ kind: 'explain' });
    expect(pressed(back, world, KEY.escape)).toMatchObject({ over: null, view: 'why' });
  });

  test('who comes back stands where the explanation was taken', () => {
    const there = pressed(result, world, 'w', 'e', KEY.down, KEY.down, KEY.enter, KEY.escape);
    expect(there.mark).toBe(2);
  });

  test('a name is typed to find it', () => {
    const found = pressed(result, world, 'e', 'look-ahead', KEY.enter);
    expect(seen(found)).toContain('look-ahead, a check of the stage');
  });

  test.each([
    ['k', 'class rule'],
    ['x', 'required'],
    ['s', 'stage'],
  ])('view %s: what it is about comes first', (view, state) => {
    const list = pressed(result, world, view, 'e');
    expect(seen(list).split('\n').slice(3, 12).join('\n')).toContain(state);
  });
});

test('the words of a question stand under why it is asked, and can be explained from there', () => {
  const question = goneTo(start, { at: 'question', id: 'fixture-height', subject: 0 }, world);
  const why = pressed(question, world, '\u0019');
  expect(seen(why)).toContain('- faceplate: The round plate');
  expect(seen(pressed(why, world, 'e', KEY.enter))).toContain('a word of the glossary');
});

test('a text that is typed is typed', () => {
  const list = typed(pressed(result, world, 'e'), 'e');
  expect(list.over).toEqual({ kind: 'explain' });
});
