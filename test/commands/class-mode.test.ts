import { PassThrough, Readable } from 'node:stream';
import { expect, test } from 'vitest';
import { lessonCommand } from '../../src/commands/lesson.ts';
import { folderWith } from '../temporary-folder.ts';

async function shown(...lines: readonly string[]): Promise<string> {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const stdin = Readable.from(lines.map((line) => `${line}\n`)) as Readable & { isTTY?: boolean };
  const around = { stdin, stdout, stderr, env: { XDG_STATE_HOME: folderWith({}) } };
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
