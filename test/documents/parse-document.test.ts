import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../src/documents/parse-document.ts';
import { describeProblem } from '../../src/documents/problem.ts';

function problemsOf(text: string): readonly string[] {
  const read = parseDocument(text, 'f');
  return (read.ok ? read.value.problems : read.problems).map(describeProblem);
}

function dataOf(text: string): unknown {
  const read = parseDocument(text, 'f');
  if (!read.ok) throw new Error(read.problems.map(describeProblem).join('\n'));
  return read.value.value;
}

describe('what is meant comes out as plain data', () => {
  test('YAML and JSON', () => {
    expect(dataOf('a: 1\nb: [x, 2.5, true]\nc: { d: 2026-01-01 }')).toEqual({
      a: 1,
      b: ['x', 2.5, true],
      c: { d: '2026-01-01' },
    });
    expect(dataOf('{\n\t"a": [1,\t2],\n\t"b": "x\\u00e9\\/"\n}')).toEqual({ a: [1, 2], b: 'xé/' });
  });

  test('a byte order mark and carriage returns are no part of it', () => {
    expect(dataOf('\ufeffa: 1\r\nb: 2\r\n')).toEqual({ a: 1, b: 2 });
  });

  test('an alias stands for its value', () => {
    expect(dataOf('a: &held { m: 1 }\nb: *held')).toEqual({ a: { m: 1 }, b: { m: 1 } });
  });

  test('yes and no are words', () => {
    expect(dataOf('a: no\nb: yes')).toEqual({ a: 'no', b: 'yes' });
  });
});

describe('everything that is wrong has its line and column', () => {
  test.each([
    ['a key twice', 'a: 1\nb: 2\na: 3', 'f:3:1: the key "a" stands twice in this map, expected it once'],
    ['__proto__', 'a:\n  __proto__: 1', 'f:2:3: the key "__proto__" stands here'],
    ['__proto__ in JSON', '{"a": {"__proto__": {"b": 1}}}', 'f:1:8: the key "__proto__" stands here'],
    ['constructor', 'constructor: 1', 'f:1:1: the key "constructor" stands here'],
    ['not a number', 'a: .nan', 'f:1:4: ".nan" is no number to compute with'],
    ['infinity', 'a: 1\nb: -.inf', 'f:2:4: "-.inf" is no number to compute with'],
    ['a number beyond all', 'a: 1e400', 'f:1:4: "1e400" is no number to compute with'],
    ['a tab', 'a:\n\tb: 1', 'f:2:1: a tab indents this line'],
    ['indentation', 'a:\n    b: 1\n  c: 2', 'f:3:1: this line is indented unlike'],
    ['a second colon', 'a: b: c', 'f:1:4: a second colon stands in this line'],
    ['a sign at the beginning', 'a: @b', 'f:1:4: a text cannot begin with this sign'],
    ['a backslash', 'a: "\\z"', 'f:1:5: a backslash stands before'],
    ['an open quote', 'a: "b\nc: 1', 'f:2:5: this is not YAML: Missing closing "quote'],
    ['an open bracket', 'a: [1, 2', 'f:1:9: a bracket before this is still open, expected ]'],
    ['two documents', 'a: 1\n---\nb: 1', 'f:2:1: a second document begins here'],
    ['nothing', '', 'f:0:0: the file is empty'],
    ['a comment only', '# x\n', 'f:0:0: the file is empty'],
    ['an alias of nothing', 'a: *x', 'f:1:4: the alias "x" names nothing before it'],
    ['an alias of itself', 'a: &x [1, *x]', 'f:1:11: the alias "x" stands inside the value that it names'],
    ['a tag', 'a: !!js/function "x"', 'f:1:4: a tag (a word after an exclamation mark) stands here'],
    ['bytes', 'a: !!binary aGVsbG8=', 'f:1:13: this value is no text, number, true or false'],
    ['a list as a key', '? [a]\n: 1', 'f:1:3: this key is no plain word'],
  ])('%s', (_, text, beginning) => {
    const [problem, ...others] = problemsOf(text);
    expect(problem?.slice(0, beginning.length)).toBe(beginning);
    expect(others).toEqual([]);
  });

  test('all of it at once', () => {
    expect(problemsOf('a: 1\na: .nan\nb: { __proto__: 1 }').map((each) => each.slice(0, 6))).toEqual([
      'f:2:1:',
      'f:2:4:',
      'f:3:6:',
    ]);
  });
});

describe('places', () => {
  const read = parseDocument(
    'parts:\n  - name: Hinge\n    size: [90, 60]\n  - &x { name: Bolt }\n  - *x\n',
    'f',
  );
  const document = read.ok ? read.value : undefined;

  test('of a value, of a key, of an entry', () => {
    expect(document?.placeOf(['parts', 0, 'size', 1])).toEqual({ line: 3, column: 16 });
    expect(document?.placeOfKey(['parts', 0, 'size'])).toEqual({ line: 3, column: 5 });
    expect(document?.placeOf(['parts', 0])).toEqual({ line: 2, column: 5 });
  });

  test('of what is not there: the nearest that is', () => {
    expect(document?.placeOf(['parts', 1, 'shape'])).toEqual({ line: 4, column: 5 + 3 });
    expect(document?.placeOf(['nothing', 'at', 'all'])).toEqual({ line: 1, column: 1 });
  });

  test('behind an alias: where the alias stands', () => {
    expect(document?.placeOf(['parts', 2, 'name'])).toEqual({ line: 5, column: 5 });
  });
});
