import { mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { describeProblem } from '../../src/documents/problem.ts';
import { inWords, readFileText } from '../../src/documents/read-file.ts';

const folder = mkdtempSync(join(tmpdir(), 'fivesides-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

function problemOf(path: string): string {
  const read = readFileText(path);
  if (read.ok) return 'it was read';
  return read.problems.map((each) => describeProblem({ ...each, file: 'f' })).join('\n');
}

describe('a file that can be read', () => {
  test('is given as text, without its byte order mark', () => {
    expect(readFileText(file('plain', 'a: ½\n'))).toEqual({ ok: true, value: 'a: ½\n' });
    expect(readFileText(file('marked', '\ufeffa: 1'))).toEqual({ ok: true, value: 'a: 1' });
  });
});

describe('a file that cannot be read says why', () => {
  test('there is none, or it is a folder', () => {
    expect(problemOf(join(folder, 'nothing'))).toMatch(/^f:0:0: there is no such file, /);
    expect(problemOf(join(folder, 'nothing', 'inside'))).toMatch(/^f:0:0: there is no such file, /);
    expect(problemOf(folder)).toBe('f:0:0: this is a folder, expected a file');
  });

  test('it leads in a circle, or has a name that no file has', () => {
    symlinkSync(join(folder, 'circle'), join(folder, 'circle'));
    expect(problemOf(join(folder, 'circle'))).toMatch(/^f:0:0: the link leads in a circle, /);
    expect(problemOf('a\u0000b')).toMatch(/^f:0:0: the name holds a character/);
    expect(problemOf('x'.repeat(5000))).toMatch(/^f:0:0: the name is too long, /);
  });

  test('it is not yours', () => {
    expect(inWords(Object.assign(new Error('no'), { code: 'EACCES' }), 'file')).toBe(
      'the file may not be read by you',
    );
    expect(inWords(new Error('no'), 'folder')).toBe('the folder cannot be read');
  });

  test('it is too large, and is not read to find that out', () => {
    const large = file('large', '');
    truncateSync(large, 10 * 1024 * 1024);
    expect(problemOf(large)).toBe('f:0:0: the file has 10.0 MB, expected a file of at most 8 MB');
  });

  test('it is no text: a zero, an escape, UTF-16', () => {
    expect(problemOf(file('zero', 'a: 1\nb: \u0000'))).toBe(
      'f:2:4: the control character U+0000 stands here, expected text',
    );
    expect(problemOf(file('escape', '\u001b[2J'))).toMatch(/^f:1:1: the control character U\+001B/);
    expect(problemOf(file('wide', Buffer.from('\ufeffa: 1', 'utf16le')))).toMatch(
      /^f:0:0: the file is in UTF-16/,
    );
  });

  test('a byte that is not UTF-8, at its place', () => {
    const bytes = Buffer.concat([Buffer.from('a: 1\nbé: '), Buffer.from([0xff]), Buffer.from('\n')]);
    expect(problemOf(file('broken', bytes))).toMatch(/^f:2:5: a byte that is not UTF-8 stands here/);
    expect(problemOf(file('cut', Buffer.from('aé').subarray(0, 2)))).toMatch(
      /^f:1:2: a byte that is not UTF-8/,
    );
  });
});
