import { expect, test } from 'vitest';
import { type QuestionScreen, screenOf } from '../../src/session/screen.ts';
import { newSession } from '../../src/session/start.ts';
import { KEY, type Terminal } from './harness.ts';
import {
  answered,
  begun,
  HINGE,
  savedBy,
  settled,
  smallCatalog,
  turnsOf,
  undecided,
  until,
} from './interview.ts';

const catalog = smallCatalog();
const world = undecided(catalog);
const TURNS = turnsOf(HINGE, world);
const ROUND = turnsOf({ ...HINGE, shape: '2', diameter: '12.5', length: '40' }, world);

const at = async (id: string, turns = TURNS): Promise<Terminal> => {
  const terminal = await begun({ catalog });
  await answered(terminal, until(turns, id));
  const title = turns.find((turn) => turn.id === id)?.title;
  if (title === undefined) throw new Error(`${id} is never asked`);
  await terminal.waitFor(title);
  return terminal;
};

/** The sentence of the screen that begins so, whatever lines it is broken into. */
function sentence(text: string, begins: string): string {
  const rows = text.split('\n');
  const from = rows.findIndex((row) => row.startsWith(begins));
  if (from < 0) return '';
  const to = rows.findIndex(
    (row, index) => index > from && (row === '' || /^[^ ]+ \w+ {2}|^With it:/.test(row)),
  );
  return rows.slice(from, to).join(' ');
}

test('requirement 11: back leads from any question to the first, and what is answered later stays', async () => {
  const terminal = await at('motion');
  const before = savedBy(terminal);
  const backs = [KEY.left, KEY.shiftTab, KEY.escape];
  const numbers = until(TURNS, 'motion').map(({ title }) => title);
  for (const [index, title] of numbers.reverse().entries()) {
    terminal.send(backs[index % 3] ?? KEY.left);
    await terminal.waitFor(title);
  }
  expect(savedBy(terminal)).toEqual(before);
});

test('requirement 11: an answer that a change made impossible is kept, and marked', async () => {
  const terminal = await at('stands', ROUND);
  await terminal.press(KEY.left, KEY.left, KEY.left);
  await terminal.waitFor('Which shape does Hinge start from?');
  await terminal.press('1', '\r');
  await terminal.waitFor('How large is Hinge?');
  terminal.send(KEY.ctrlR);
  await terminal.waitFor(/Hinge: Diameter: 12\.5 mm +does not apply/);
  const [part] = savedBy(terminal).answers.parts;
  expect(part).toMatchObject({ diameter: { from: 'typed', value: 12.5 }, shape: { value: 'block' } });
});

test('requirement 12: every question is in one list with how it stands, and a few keys away', async () => {
  const terminal = await at('approaches');
  terminal.send('g');
  const text = await terminal.waitFor('Jump to a question');
  expect(text).toMatch(/Hinge: Material +answered/);
  expect(text).toMatch(/Hinge: Mass +not sure/);
  expect(text).toMatch(/Hinge: Diameter +does not apply/);
  expect(text).toMatch(/Hinge: Sides that are cut +open/);
  await terminal.press('toler');
  await terminal.waitFor(/1 question$/m);
  await terminal.waitFor(/❯ Hinge: Tolerance +open/);
  terminal.send('\r');
  await terminal.waitFor('What is the tightest tolerance');
  // where letters are typed, by another key
  await terminal.press('/');
  await terminal.waitFor('Jump to a question');
  await terminal.press('material\r');
  await terminal.waitFor('What is Hinge made of?');
  await terminal.press('g', 'diameter hinge does', '\r');
  await terminal.waitFor('That question does not apply now');
});

test('requirement 14: what an answer would do is shown without Enter, beside what the last one did', async () => {
  const terminal = await at('material');
  await settled(terminal);
  const first = sentence(terminal.text(), 'Before: ');
  expect(first).toMatch(/^Before: Size: 90 x 60 x 55 mm .* of 36 arrangements/);
  const withIt = async (): Promise<string> => sentence(await settled(terminal), 'With it: ');
  expect(await withIt()).toMatch(/ of 36 arrangements/);
  await terminal.waitFor('Enter takes: carbon steel');
  await terminal.press(KEY.down);
  await terminal.waitFor('Enter takes: alloy steel');
  expect(sentence(await settled(terminal), 'Before: ')).toBe(first);
  const { answers } = savedBy(terminal);
  // a size, digit by digit
  await terminal.press('g', 'size', '\r');
  await terminal.waitFor('How large is Hinge?');
  await terminal.press('90 x 60 x 5');
  await terminal.waitFor('Enter takes: 90 x 60 x 5 mm');
  const low = await withIt();
  await terminal.press('0');
  await terminal.waitFor('Enter takes: 90 x 60 x 50 mm');
  const high = await withIt();
  await terminal.press('0');
  const highest = await withIt();
  expect(low).toMatch(/ of 36 arrangements/);
  expect(new Set([low, high, highest]).size).toBeGreaterThan(1);
  await terminal.press('x');
  await terminal.waitFor('✗ ');
  expect(savedBy(terminal).answers).toEqual(answers);
});

test('requirement 16: the review lists every answer with its source, and each is one key from being changed', async () => {
  const terminal = await at('motion');
  terminal.send('r');
  await terminal.waitFor('Review');
  const screen = screenOf(newSession(world, [], null, 'all'), world) as QuestionScreen;
  await terminal.press('\u001b[H');
  await terminal.waitFor('❯ To the result');
  await terminal.waitFor(new RegExp(`${screen.title}: millimeters +typed`));
  await terminal.waitFor(/Hinge: Size: 90 x 60 x 55 mm +typed/);
  await terminal.waitFor(/Hinge: Mass: worked out .* +not sure/);
  await terminal.waitFor(/Hinge: Motion: no answer yet +open/);
  await terminal.press(KEY.down, KEY.down, KEY.down, KEY.down, KEY.down);
  await terminal.waitFor(/❯ Hinge: Size: 90/);
  terminal.send('\r');
  await terminal.waitFor('How large is Hinge?');
  terminal.send('3 1/2 x 2 x 2 in\r');
  await terminal.waitFor(/❯ Hinge: Size: 88\.9 x 50\.8 x 50\.8 mm +typed/);
  terminal.send(KEY.escape);
  await terminal.waitFor('Does the rotary move while Hinge is cut?');
});

test('the review that ends the interview leads to the result with Enter', async () => {
  const terminal = await begun({ catalog });
  await answered(terminal, TURNS);
  await terminal.waitFor('❯ To the result');
  terminal.send('\r');
  await terminal.waitFor('The answer');
});

test('requirement 13: one key says not sure at every question, and the result says what that leaves open', async () => {
  const terminal = await begun({ catalog });
  const turns = turnsOf({}, world);
  await answered(terminal, turns);
  await terminal.waitFor('❯ To the result');
  const { answers } = savedBy(terminal);
  const given = [answers.shop, ...answers.parts].flatMap((each) => Object.values(each));
  expect(given.length).toBe(turns.filter(({ id }) => id !== 'parts').length);
  expect(new Set(given.map(({ from }) => from))).toEqual(new Set(['not sure']));
  terminal.send('\r');
  await terminal.waitFor('The answer');
  const text = (await settled(terminal)).replace(/\s+/g, ' ');
  expect(text).toMatch(/Most worth finding out: first, .+: .+; second, /);
});

test('requirement 17: one key takes back each change in words, also after a jump', async () => {
  const terminal = await at('approaches');
  const before = savedBy(terminal);
  await terminal.press('g', 'hinge material', '\r');
  await terminal.waitFor('What is Hinge made of?');
  await terminal.press('1\r');
  await terminal.waitFor('From which directions is Hinge cut?');
  expect(savedBy(terminal)).not.toEqual(before);
  await terminal.press('u');
  await terminal.waitFor(/Hinge: Material is wrought aluminum again, it was carbon steel\./);
  expect(savedBy(terminal).answers).toEqual(before.answers);
  await terminal.press('u');
  await terminal.waitFor(/Hinge: \w+ is open again/);
});
