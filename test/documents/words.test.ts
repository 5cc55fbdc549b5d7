import { describe, expect, test } from 'vitest';
import { nearest } from '../../src/documents/nearest.ts';
import { pathText, valueAt } from '../../src/documents/path-text.ts';
import { printable, quoted } from '../../src/documents/printable.ts';
import { inOrder } from '../../src/documents/problem.ts';

describe('the word that was probably meant', () => {
  test.each([
    ['heigth', ['height', 'width'], 'height'],
    ['MASS', ['mass', 'name'], 'mass'],
    ['sids', ['top', 'sides', 'around'], 'sides'],
    ['depth', ['mass', 'name'], undefined],
    ['x'.repeat(10_000), ['x'], undefined],
    ['', ['a', 'mass'], 'a'],
  ])('%s', (word, candidates, expected) => {
    expect(nearest(word, candidates)).toBe(expected);
  });
});

describe('a path in words', () => {
  const data = { parts: [{ name: 'Hinge', size: [1, 2] }, { id: 'b', name: 'B' }, { shape: 'block' }, 5] };

  test('names entries by id, by name, by number', () => {
    expect(pathText(data, ['parts', 0, 'size', 1])).toBe('parts[Hinge].size[1]');
    expect(pathText(data, ['parts', 1])).toBe('parts[b]');
    expect(pathText(data, ['parts', 2, 'shape'])).toBe('parts[2].shape');
    expect(pathText(data, ['parts', 9, 'shape'])).toBe('parts[9].shape');
    expect(pathText(data, [])).toBe('');
  });

  test('leads to nothing that the data does not own', () => {
    expect(valueAt(data, ['parts', 0, 'size', 1])).toBe(2);
    expect(valueAt(data, ['toString'])).toBeUndefined();
    expect(valueAt(data, ['parts', 3, 'name'])).toBeUndefined();
  });
});

describe('what is shown of a file', () => {
  test('cannot be more than one short line', () => {
    expect(quoted('a'.repeat(500)).length).toBeLessThan(70);
    expect(quoted(`${'😀'.repeat(100)}`)).not.toMatch(/\\u\{d/);
    expect(quoted('a\nb')).toBe('"a\\u{a}b"');
    expect(quoted({ a: 1 })).toBe('a map');
    expect(quoted([1, 'x'])).toBe('[1, "x"]');
    expect(quoted([[1]])).toBe('a list of 1');
    expect(quoted(null)).toBe('empty');
  });

  test('shows what cannot be printed by its number', () => {
    expect(printable('a\u001b[2J\u009b\u202eb\ud800')).toBe('a\\u{1b}[2J\\u{9b}\\u{202e}b\\u{d800}');
    expect(printable('½ µm N·m 日本 😀')).toBe('½ µm N·m 日本 😀');
  });
});

test('problems come file by file, line by line', () => {
  const at = (file: string, line: number, column: number) => ({
    file,
    line,
    column,
    found: '',
    expected: '',
  });
  const problems = [at('b', 2, 1), at('a', 5, 1), at('b', 1, 9), at('b', 1, 2)];
  expect(inOrder(problems)).toEqual([at('b', 1, 2), at('b', 1, 9), at('b', 2, 1), at('a', 5, 1)]);
  expect(inOrder(problems, ['a', 'b'])[0]).toEqual(at('a', 5, 1));
});
