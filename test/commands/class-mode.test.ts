import { PassThrough, Readable } from 'node:stream';
import { expect, test } from 'vitest';
import { lessonCommand } from '../../src/commands/lesson.ts';
import { folderWith } from '../temporary-folder.ts';

const shown = (...lines: readonly string[]): Promise<string> => shownIn(folderWith({}), ...lines);

async function shownIn(state: string, ...lines: readonly string[]): Promise<string> {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const stdin = Readable.from(lines.map((line) => `${line}\n`)) as Readable & { isTTY?: boolean };
  const around = { stdin, stdout, stderr, env: { XDG_STATE_HOME: state } };
  expect(await lessonCommand('part-size', { forClass: true }, around)).toBe(0);
  return String(stdout.read() ?? '');
}

test('line by line a class gets the same: guesses, the way, and given numbers tried otherwise', async () => {
  const said = await shown('', '80', 'what if', 'what if F = 150 mm', 'drop', 'next step', 'quit');
  expect(said).toContain('Not 80 mm. That is: length of the part as it stands.');
  expect(said).toContain('F: diameter of the fixture, 90 mm');
  expect(said).toMatch(/Needed +100 mm +150 mm/);
  expect(said).toContain('STEP 2 OF 5');
});

test('what is not accepted is refused in words', async () => {
  expect(await shown('', 'what if F = -5', 'quit')).toContain('-5 is not accepted: expected');
});

test('a class that was broken off goes on where it was, with what the room had said', async () => {
  const state = folderWith({});
  await shownIn(state, '', '80', '100', 'next step', '');
  const said = await shownIn(state, 'next step', 'next step', 'next step', 'next step');
  expect(said).toContain('The class goes on at step 2;');
  expect(said).toContain('STEP 3 OF 5');
  expect(said).not.toContain('STEP 1 OF 5');
  expect(said.replace(/\s+/g, ' ')).toContain('The room has 7 of 10 points');
  // at its end it begins anew
  expect(await shownIn(state, 'quit')).not.toContain('goes on at');
});
