import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { writeFileText, writeFileTexts } from '../../src/documents/write-file.ts';
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

describe('a link', () => {
  const linked = (target: string): string => {
    const link = join(folder, 'a.md');
    symlinkSync(join(folder, target), link);
    return link;
  };
  const words = 'a link is there, and is not written through';

  test('to a file is not written through, and stays a link', () => {
    writeFileSync(join(folder, 'mine.md'), 'mine');
    const link = linked('mine.md');
    expect(writeFileText(link, 'x', { overwrite: true })).toEqual({ ok: false, why: 'failed', words });
    expect(readFileSync(join(folder, 'mine.md'), 'utf8')).toBe('mine');
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
  });

  test('to nothing makes no file where it leads', () => {
    const link = linked('elsewhere.md');
    expect(writeFileText(link, 'x', { overwrite: true })).toEqual({ ok: false, why: 'failed', words });
    expect(readdirSync(folder)).toEqual(['a.md']);
  });

  test('in a folder on the way is followed: that is where the user said', () => {
    mkdirSync(join(folder, 'deep'));
    symlinkSync(join(folder, 'deep'), join(folder, 'way'));
    expect(writeFileText(join(folder, 'way', 'a.md'), 'x', { overwrite: false })).toEqual({ ok: true });
    expect(readdirSync(join(folder, 'deep'))).toEqual(['a.md']);
  });
});

test('a file keeps its rights when it is replaced', () => {
  const file = join(folder, 'a.md');
  writeFileSync(file, 'mine');
  chmodSync(file, 0o640);
  expect(writeFileText(file, 'yours', { overwrite: true })).toEqual({ ok: true });
  expect(statSync(file).mode & 0o777).toBe(0o640);
});

test('of several files none is written where one cannot be, and nothing is left beside them', () => {
  writeFileSync(join(folder, 'b.md'), 'mine');
  const file = (name: string, overwrite = true) => ({ path: join(folder, name), text: 'new', overwrite });
  expect(writeFileTexts([file('a.md'), file('b.md', false)])).toEqual({ ok: false, why: 'exists' });
  expect(writeFileTexts([file('a.md'), file('nowhere/b.md')])).toMatchObject({ ok: false, why: 'failed' });
  // found out only when it is written: there is room for the name, and none for what is written under meanwhile
  expect(writeFileTexts([file('b.md'), file('x'.repeat(250))])).toMatchObject({
    words: 'the name is too long',
  });
  expect(readdirSync(folder)).toEqual(['b.md']);
  expect(readFileSync(join(folder, 'b.md'), 'utf8')).toBe('mine');
  expect(writeFileTexts([file('a.md'), file('b.md')])).toEqual({ ok: true });
  expect(readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual(['new', 'new']);
});
