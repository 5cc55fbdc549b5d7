import { mkdtempSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { expect, test } from 'vitest';
import { type LessonOptions, lessonCommand } from '../../src/commands/lesson.ts';
import { numbered, seedsOf } from '../../src/commands/lesson-sheets.ts';

const fresh = (): string => mkdtempSync(join(tmpdir(), 'fivesides-sheets-'));

async function write(name: string | undefined, options: LessonOptions, state = fresh()) {
  const [stdout, stderr] = [new PassThrough(), new PassThrough()];
  const stdin = Readable.from([]) as Readable & { isTTY?: boolean };
  const code = await lessonCommand(name, options, { stdin, stdout, stderr, env: { XDG_STATE_HOME: state } });
  return { code, said: String(stderr.read() ?? ''), printed: String(stdout.read() ?? '') };
}

test('a worksheet, its pictures beside it, and its key', async () => {
  const folder = fresh();
  const [worksheet, solutions] = [join(folder, 'sheet.md'), join(folder, 'key.md')];
  const { code, said, printed } = await write('part-size', { worksheet, solutions });
  expect([code, printed]).toEqual([0, '']);
  expect(said).toContain(`written to ${worksheet}, its figures to sheet-figures beside it.`);
  expect(readdirSync(folder).sort()).toEqual(['key.md', 'sheet-figures', 'sheet.md']);
  expect(readFileSync(worksheet, 'utf8')).toContain('Sheet `part-size`, as it is written.');
  expect(readFileSync(solutions, 'utf8')).toContain('Answer: **190 mm**');
});

test('nothing is replaced unless it is said, and then both are', async () => {
  const folder = fresh();
  const [worksheet, solutions] = [join(folder, 'sheet.md'), join(folder, 'key.md')];
  writeFileSync(solutions, 'mine');
  const refused = await write('part-size', { worksheet, solutions });
  expect([refused.code, readdirSync(folder)]).toEqual([2, ['key.md']]);
  expect(refused.said).toContain(`${solutions}: it is there already: say --overwrite, or name another file.`);
  expect((await write('part-size', { worksheet, solutions, overwrite: true })).code).toBe(0);
  expect(readFileSync(solutions, 'utf8')).not.toBe('mine');
});

test.each([
  ['a folder', (folder: string) => folder, 'that is a folder'],
  ['a link', (folder: string) => join(folder, 'link.md'), 'a link is there'],
  [
    'a folder that there is none',
    (folder: string) => join(folder, 'none', 'a.md'),
    'there is no such folder',
  ],
  ['a file where a folder would be', (folder: string) => join(folder, 'own.md', 'a.md'), 'folder'],
])('%s is told', async (_what, pathIn, told) => {
  const folder = fresh();
  symlinkSync(join(folder, 'own.md'), join(folder, 'link.md'));
  writeFileSync(join(folder, 'own.md'), 'mine');
  const { code, said } = await write('part-size', { worksheet: pathIn(folder), overwrite: true });
  expect([code, readFileSync(join(folder, 'own.md'), 'utf8')]).toEqual([2, 'mine']);
  expect(said).toContain(told);
});

test('worksheet and key as one file are refused', async () => {
  const file = join(fresh(), 'both.md');
  const { code, said } = await write('part-size', { worksheet: file, solutions: file });
  expect([code, said]).toEqual([2, 'fivesides: worksheet and solutions are the same file; name two.\n']);
});

test('several have their seed in their name', () => {
  expect(numbered('class/reach.md', 7)).toBe('class/reach-7.md');
  expect(seedsOf({ units: 'mm', variants: 3, seed: 7 })).toEqual([7, 8, 9]);
  expect(seedsOf({ units: 'mm', variants: 2 })).toEqual([1, 2]);
  expect([seedsOf({ units: 'mm' }), seedsOf({ units: 'mm', seed: 4 })]).toEqual([[null], [4]]);
});

test('a class has sheets with numbers of their own, and their keys', async () => {
  const folder = fresh();
  const [worksheet, solutions] = [join(folder, 'sheet.md'), join(folder, 'key.md')];
  expect((await write('part-size', { worksheet, solutions, variants: '2', seed: '7' })).code).toBe(0);
  expect(readdirSync(folder).sort()).toEqual([
    'key-7.md',
    'key-8.md',
    'sheet-7-figures',
    'sheet-7.md',
    'sheet-8-figures',
    'sheet-8.md',
  ]);
  const [seven, eight] = [7, 8].map((seed) => readFileSync(join(folder, `sheet-${seed}.md`), 'utf8'));
  expect(seven).toContain('variant 7.');
  expect(seven?.replaceAll('sheet-7', '').replace('variant 7', '')).not.toBe(
    eight?.replaceAll('sheet-8', '').replace('variant 8', ''),
  );
  expect(readFileSync(join(folder, 'key-8.md'), 'utf8')).toContain('variant 8.');
});

test.each([
  [{ seed: '-1' }, '--seed takes a whole number from 0'],
  [{ seed: '1.5' }, '--seed takes a whole number from 0'],
  [{ variants: '0' }, '--variants takes a whole number from 1 to 100'],
  [{ variants: 'many' }, '--variants takes a whole number from 1 to 100'],
])('%j is told', async (typed, told) => {
  const folder = fresh();
  const { code, said } = await write('part-size', { worksheet: join(folder, 'a.md'), ...typed });
  expect([code, readdirSync(folder)]).toEqual([2, []]);
  expect(said).toContain(told);
});

test('a seed without a sheet is told', async () => {
  const { code, said } = await write('part-size', { seed: '3' });
  expect([code, said]).toEqual([
    2,
    'fivesides: --seed and --variants are for --worksheet and --solutions.\n',
  ]);
});

test('a sheet of no lesson is told', async () => {
  const folder = fresh();
  const { code, said, printed } = await write(undefined, { solutions: join(folder, 'key.md') });
  expect([code, printed, readdirSync(folder)]).toEqual([2, '', []]);
  expect(said).toContain('say which lesson');
});
