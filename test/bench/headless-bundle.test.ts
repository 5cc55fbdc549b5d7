import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bytesByPackage, DRAWING, loadedChunks } from '../../bench/terminal/loaded-chunks.ts';
import { bundle } from '../../scripts/bundle.mjs';

const folder = mkdtempSync(join(tmpdir(), 'fivesides-bundle-'));
let metafile: Awaited<ReturnType<typeof bundle>>;
beforeAll(async () => {
  metafile = await bundle(folder);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const packagesOf = (command: string): readonly string[] => [
  ...bytesByPackage(loadedChunks(metafile, command)).keys(),
];

test('requirement 5: a decision on a file loads nothing that draws', () => {
  const drawing = packagesOf('src/commands/decide.ts').filter((name) => DRAWING.includes(name));
  expect(drawing).toEqual([]);
});

test('requirement 5: checking a catalog loads nothing that draws', () => {
  const drawing = packagesOf('src/commands/catalog.ts').filter((name) => DRAWING.includes(name));
  expect(drawing).toEqual([]);
});

test('requirement 23: a lesson that is gone through line by line, or written for paper, loads nothing that draws', () => {
  // the screen is behind an import of its own, made where there is a terminal
  const now = [...bytesByPackage(loadedChunks(metafile, 'src/commands/lesson.ts', false)).keys()];
  expect(now.filter((name) => DRAWING.includes(name))).toEqual([]);
  expect(packagesOf('src/commands/lesson.ts')).toEqual(expect.arrayContaining(DRAWING));
});

test('what reads tables is loaded by the import alone', () => {
  const tables = ['read-excel-file', 'unzipper-esm'];
  expect(packagesOf('src/commands/catalog-import.ts')).toEqual(expect.arrayContaining(tables));
  for (const command of ['decide', 'catalog', 'interview']) {
    const loaded = packagesOf(`src/commands/${command}.ts`).filter((name) => tables.includes(name));
    expect(loaded, command).toEqual([]);
  }
});

test('the interview loads all that draws, so the names are the right ones', () => {
  expect(packagesOf('src/commands/interview.ts')).toEqual(expect.arrayContaining(DRAWING));
});

test('requirement 5: of zod only what is used is bundled', () => {
  const locales = Object.values(metafile.outputs)
    .flatMap(({ inputs }) => Object.entries(inputs))
    .filter(([path, { bytesInOutput }]) => /node_modules\/zod\/.*\/locales\//.test(path) && bytesInOutput > 0)
    .map(([path]) => path.replace(/.*\//, ''));
  expect(locales.filter((name) => name !== 'en.js')).toEqual([]);
});

test('requirement 4: the first words come before anything that draws, asks or decides', () => {
  const packages = packagesOf('src/commands/early-frame.ts');
  expect(packages.toSorted()).toEqual(['commander', 'fastest-levenshtein']);
});
