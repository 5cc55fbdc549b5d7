import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { writeFileText } from '../../src/documents/write-file.ts';
import { folderWith } from '../temporary-folder.ts';

let folder = '';
beforeEach(() => {
  folder = folderWith({});
});

test('a file is written as a whole, and nothing is left beside it', () => {
  const file = join(folder, 'a.md');
  expect(writeFileText(file, 'one', { overwrite: false })).toEqual({ ok: true });
  expect(readFileSync(file, 'utf8')).toBe('one');
  expect(readdirSync(folder)).toEqual(['a.md']);
});

test('a file that is there is replaced only where that is said', () => {
  const file = join(folder, 'a.md');
  writeFileSync(file, 'mine');
  expect(writeFileText(file, 'yours', { overwrite: false })).toEqual({ ok: false, why: 'exists' });
  expect(readFileSync(file, 'utf8')).toBe('mine');
  expect(writeFileText(file, 'yours', { overwrite: true })).toEqual({ ok: true });
  expect(readFileSync(file, 'utf8')).toBe('yours');
});

test('folders are made only where that is said', () => {
  const file = join(folder, 'deep', 'down', 'a.md');
  const words = 'there is no such folder';
  expect(writeFileText(file, 'x', { overwrite: true })).toEqual({ ok: false, why: 'failed', words });
  expect(writeFileText(file, 'x', { overwrite: true, makeFolders: true })).toEqual({ ok: true });
});

test.each([
  ['a folder', (at: string) => mkdirSync(at), 'that is a folder'],
  ['inside a file', (at: string) => writeFileSync(at, ''), 'there is no such folder'],
])('what cannot be written to is said in words: %s', (what, make, words) => {
  const at = join(folder, 'there');
  make(at);
  const file = what === 'inside a file' ? join(at, 'a.md') : at;
  expect(writeFileText(file, 'x', { overwrite: true })).toEqual({ ok: false, why: 'failed', words });
});

test('a name that no file can have is said in words', () => {
  const long = writeFileText(join(folder, 'x'.repeat(300)), 'x', { overwrite: false });
  expect(long).toMatchObject({ ok: false, words: 'the name is too long' });
  const strange = writeFileText(join(folder, 'a\u0000b'), 'x', { overwrite: false });
  expect(strange).toMatchObject({ ok: false, words: 'the name holds a character that no file name has' });
});
