import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const REPOSITORY = join(import.meta.dirname, '..', '..');
const ALL = Array.from({ length: 25 }, (_, index) => index + 1);
/** What is measured, not tested: speed and memory. */
const MEASURED = [4, 5, 6, 7];

const textOf = (file: string): string => readFileSync(join(REPOSITORY, file), 'utf8');
const filesIn = (folder: string, end: string): readonly string[] =>
  readdirSync(join(REPOSITORY, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith(end))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`);

const TITLE = /\b(?:test|it|describe)\b[^'`]*['`]requirements? (\d+(?:(?:, | and )\d+)*)/g;

/** The numbers that stand in titles of tests, by file. */
const tested = new Map(
  filesIn('test', '.test.ts').map((file) => [
    file.replace(/\.test\.ts$/, ''),
    [...textOf(file).matchAll(TITLE)].flatMap(([, numbers = '']) => numbers.match(/\d+/g)?.map(Number) ?? []),
  ]),
);
const measured = new Map(
  filesIn('bench', '.ts').map((file) => [
    file.replace(/\.ts$/, ''),
    [...textOf(file).matchAll(/requirement: (\d+)/g)].map(([, number]) => Number(number)),
  ]),
);

/** The table: number → files that hold it. */
const table = new Map(
  [...textOf('DEVELOPERS.md').matchAll(/^\| (\d+) \| .* \| ((?:(?:test|bench)\/[\w/-]+(?:, )?)+) \|$/gm)].map(
    ([, number, files = '']) => [Number(number), files.split(', ')] as const,
  ),
);

test('every requirement on the terminal has a test that names it, or a figure', () => {
  const numbers = new Set([...tested.values(), ...measured.values()].flat());
  expect([...numbers].toSorted((one, other) => one - other)).toEqual(ALL);
  expect([...new Set([...measured.values()].flat())].toSorted()).toEqual(MEASURED);
});

test('the table names every requirement once, and files that hold it', () => {
  expect([...table.keys()]).toEqual(ALL);
  const missing = [...table].flatMap(([number, files]) =>
    files
      .filter((file) => !(tested.get(file) ?? measured.get(file))?.includes(number))
      .map((file) => `${number}: ${file}`),
  );
  expect(missing).toEqual([]);
});
