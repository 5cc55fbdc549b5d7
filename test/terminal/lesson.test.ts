import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyFolder, KEY, PROGRAM, type StartOptions, start, type Terminal } from './harness.ts';

const lesson = (args: readonly string[], options: StartOptions = {}): Terminal =>
  start({ ...options, command: [process.execPath, PROGRAM, 'lesson', ...args] });

/** As it is kept beside the interview, in the home folder of the test. */
const keptIn = (cwd: string): unknown =>
  JSON.parse(readFileSync(join(cwd, '.local', 'state', 'fivesides', 'lessons.json'), 'utf8'));

async function typed(terminal: Terminal, text: string, then: string): Promise<string> {
  await terminal.press(...text, KEY.enter);
  return terminal.waitFor(then);
}

test.each([
  [60, 20],
  [80, 24],
  [120, 40],
])('from the list to the end of a lesson at %i x %i', async (columns, rows) => {
  const terminal = lesson([], { columns, rows });
  await terminal.waitFor('From the size of a part');
  await terminal.press('6', KEY.enter);
  await terminal.waitFor('Your prediction');
  await typed(terminal, '', 'Nothing is predicted yet');
  await typed(terminal, '12 kg', 'no unit of length');
  await terminal.press(KEY.escape);
  await typed(terminal, '80', 'Not 80 mm.');
  await terminal.press(KEY.ctrlN);
  await terminal.waitFor('Hint: The part is 80 by 60 mm.');
  await typed(terminal, '10 cm', 'Right: 4 points.');
  await terminal.press(KEY.enter);
  await terminal.waitFor('step 2 of 5');
  await terminal.press(KEY.ctrlR);
  await terminal.waitFor('No points for this step.');
  await terminal.press(KEY.enter);
  await terminal.waitFor('step 3 of 5');
  await terminal.press('1', KEY.enter);
  await terminal.waitFor('Right: 10 points.');
  await terminal.press(KEY.enter);
  await terminal.waitFor('step 4 of 5');
  await terminal.press('1', KEY.enter);
  await terminal.waitFor('Right: 10 points.');
  await terminal.press(KEY.enter);
  await terminal.waitFor('step 5 of 5');
  await typed(terminal, '22.49 lb', 'Right: 10 points.');
  await terminal.press(KEY.enter);
  const end = await terminal.waitFor('The lesson is at its end: 34 of 50 points.');
  expect(end).toContain('0 of 10');
  await terminal.press('q');
  expect((await terminal.ended()).code).toBe(0);
  expect(terminal.lines().join('\n')).toContain('34 of 50 points');
});

test('killed and begun again, it goes on where it was; another size keeps what is typed', async () => {
  const cwd = emptyFolder();
  const first = lesson(['part-size'], { cwd });
  await first.waitFor('Your prediction');
  await typed(first, '100', 'Right: 10 points.');
  await first.press(KEY.enter);
  await first.waitFor('step 2 of 5');
  await first.press(KEY.ctrlN);
  await first.waitFor('Hint:');
  first.kill('SIGKILL');
  await first.ended();
  expect(keptIn(cwd)).toMatchObject({ runs: { 'part-size': { index: 1, hints: 1, scores: [10] } } });
  const again = lesson(['part-size'], { cwd });
  await again.waitFor('step 2 of 5, 10 of 10 points');
  await again.press(...'19');
  const small = await again.resize(60, 20);
  expect(small).toContain('❯ 19');
  expect(small).toContain('Hint:');
  expect(await again.resize(120, 40)).toContain('❯ 19');
  again.kill('SIGTERM');
  expect((await again.ended()).code).toBe(143);
  expect(again.modes).toEqual({ alternate: false, cursor: true, paste: false });
  expect(again.lines().join('\n')).toContain('fivesides lesson part-size');
});

test('Ctrl-C twice leaves with 130, and gives the terminal back', async () => {
  const terminal = lesson(['reach']);
  await terminal.waitFor('Your prediction');
  await terminal.press(KEY.ctrlC);
  await terminal.waitFor('Ctrl-C again leaves');
  await terminal.press(KEY.ctrlC);
  expect((await terminal.ended()).code).toBe(130);
  expect(terminal.modes).toEqual({ alternate: false, cursor: true, paste: false });
});

test.each([
  [60, 20],
  [120, 40],
])('a class at %i x %i: page by page, a given number tried otherwise, and dropped', async (columns, rows) => {
  const terminal = lesson(['part-size', '--class'], { columns, rows });
  await terminal.waitFor('FROM THE SIZE OF A PART');
  await terminal.press(' ');
  await terminal.waitFor('STEP 1 OF 5');
  await terminal.press('i', ...'fixture', KEY.enter);
  await terminal.waitFor('Instead');
  await typed(terminal, '150', 'With it');
  expect(terminal.text()).toMatch(/Needed +100 mm +150 mm/);
  await terminal.press('d');
  await terminal.waitFor('STEP 1 OF 5');
  await terminal.press('nnnnn');
  await terminal.waitFor('The lesson is at its end.');
  await terminal.press('q');
  expect((await terminal.ended()).code).toBe(0);
});

test('--plain asks line by line in a terminal too', async () => {
  const terminal = lesson(['part-size', '--plain']);
  await terminal.waitFor('Your prediction >');
  terminal.send('quit\r');
  expect((await terminal.ended()).code).toBe(0);
  expect(terminal.raw).not.toContain('\u001b');
});
