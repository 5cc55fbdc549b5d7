import { describe, expect, test } from 'vitest';
import { newSession } from '../../src/session/start.ts';
import { plainFrame } from '../../src/ui/draw/plain-frame.ts';
import { frame } from '../../src/ui/frame/frame.ts';
import { readKeys } from '../../src/ui/keys/read-keys.ts';
import { press } from '../../src/ui/state/press.ts';
import { beginning, type Ui } from '../../src/ui/state/ui.ts';
import { KEY, start, type Terminal } from './harness.ts';
import {
  answered,
  begun,
  decided,
  HINGE,
  settled,
  smallCatalog,
  turnsOf,
  undecided,
  until,
} from './interview.ts';

const catalog = smallCatalog();
const world = undecided(catalog);
const TURNS = turnsOf(HINGE, world);
const MATERIAL = until(TURNS, 'material');

/** Rows of the screen by what they are for. */
function rowsOf(text: string) {
  const rows = text.split('\n');
  const keys = rows.findLastIndex((row) => row !== '');
  const feedback = rows.findIndex((row) => /^(Enter takes|Before|With it|carbon steel): /.test(row));
  return {
    title: rows[0] ?? '',
    answers: rows.filter((row) => /^(❯ | {2})\S/.test(row) && !/more$/.test(row)),
    feedback: feedback < 0 ? [] : rows.slice(feedback, keys).filter((row) => row !== ''),
    keys: rows[keys] ?? '',
  };
}

async function atMaterial(): Promise<Terminal> {
  const terminal = await begun({ catalog });
  await answered(terminal, MATERIAL);
  await terminal.waitFor('What is Hinge made of?');
  await settled(terminal);
  return terminal;
}

test('requirement 1: each size shows what it has room for, and a window that is too small says so', async () => {
  const terminal = await atMaterial();
  const large = rowsOf(terminal.text());
  expect(large.title).toMatch(/question 6 of \d+, \d+ open$/);
  expect(large.answers.length).toBeGreaterThanOrEqual(5);
  expect(large.feedback.length).toBeGreaterThanOrEqual(3);
  expect(large.keys).toMatch(/Enter take .*\? help$/);
  const small = rowsOf(await terminal.resize(60, 20));
  expect(small.title).toMatch(/question 6 of \d+, \d+ open$/);
  expect(small.answers.length).toBeGreaterThanOrEqual(5);
  expect(small.feedback).toHaveLength(1);
  expect(small.keys).toMatch(/Enter take .*\? help$/);
  const tooSmall = await terminal.resize(59, 19);
  expect(tooSmall.trim()).toBe('Make the window larger: 60 columns by 20 rows at least.');
  expect((await terminal.resize(20, 5)).trim()).toBe('Enlarge to 60×20');
  terminal.send(`${KEY.down}${KEY.enter}`);
  await terminal.quiet();
  expect(rowsOf(await terminal.resize(80, 24))).toEqual(large);
});

test('requirement 2: no screen wipes what was there before, or is taller or wider than the window', async () => {
  const terminal = await atMaterial();
  const screens = ['g', KEY.escape, '?', KEY.escape, 'w', KEY.escape, 'f', KEY.escape, 'p', 'r', 't', 'w'];
  for (const [columns, rows] of [
    [60, 20],
    [80, 24],
    [120, 40],
  ] as const) {
    await terminal.resize(columns, rows);
    for (const key of screens) {
      await terminal.press(key);
      expect(terminal.faults).toEqual([]);
      expect(terminal.screen().filter((row) => row !== '').length).toBeGreaterThan(5);
    }
    await settled(terminal);
    // from the result to the review, the parts, and the question
    await terminal.press(KEY.escape, KEY.escape, KEY.escape, KEY.escape);
    await terminal.waitFor('What is Hinge made of?');
  }
  expect(terminal.raw).not.toContain('\u001b[3J');
});

test('requirement 3: with another size there is one title and one line of keys, and what is typed stays', async () => {
  const terminal = await begun({ catalog });
  await answered(terminal, until(TURNS, 'size'));
  await terminal.waitFor('How large is Hinge?');
  await terminal.press('123 x 4');
  for (const [columns, rows] of [
    [60, 20],
    [120, 40],
    [80, 24],
    [120, 40],
    [60, 20],
  ] as const) {
    await terminal.resize(columns, rows);
    const text = terminal.lines().join('\n');
    expect(text.match(/question 5 of/g), text).toHaveLength(1);
    expect(text.match(/Enter take {2}/g)).toHaveLength(1);
    expect(text.match(/How large is Hinge\?/g)).toHaveLength(1);
    expect(text).toContain('❯ 123 x 4');
  }
});

describe('what is painted', () => {
  const world = decided(catalog);
  /** The frame as it is meant to be, without a terminal. */
  const meant = (ui: Ui, sessionFile: string): readonly string[] => {
    const drawing = { world, ascii: false, color: true, sessionFile, unsaved: null };
    const text = plainFrame(frame(ui, { columns: 80, rows: 24 }, drawing), '❯');
    return [...text.replace(/^\S*\[H/, '').split('\r\n'), ''];
  };
  const { down, up, enter, escape: esc, ctrlN, ctrlU, backspace, shiftTab, left } = KEY;
  const keys = [
    ...[enter, down, down, up, '?', down, esc, enter, down, down, down, '9', 'w', esc, enter],
    ...['H', 'in', 'ge', backspace, 'e', enter, down, down, up, 'g', 'ma', backspace, down, esc],
    ...[enter, '1', '2 mm', backspace, ctrlU, ctrlN, left, shiftTab, 'r', down, down, esc, 'u', 'f', esc],
  ];

  test('no row of an earlier frame stays after any of many keys', async () => {
    const terminal = start({ catalog });
    await terminal.waitFor('Begin a new interview');
    let ui = beginning(newSession(world, [], null, 'all'), { kind: 'start' });
    for (const key of keys) {
      for (const each of readKeys(key, true).keys) [ui] = press(ui, each, world);
      const rows = meant(ui, `${terminal.cwd}/kept.json`);
      terminal.send(key);
      const isThere = (text: string): boolean => text === rows.join('\n');
      await terminal.waitFor(isThere, 5000).catch(() => undefined);
      expect(terminal.screen(), `after ${JSON.stringify(key)}`).toEqual(rows);
    }
  });
});
