import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../src/documents/parse-document.ts';
import { describeProblem } from '../../src/documents/problem.ts';

function firstProblem(text: string): string {
  const read = parseDocument(text, 'f');
  return read.ok ? 'it was read' : read.problems.slice(0, 1).map(describeProblem).join('');
}

const levels = 'abcdefghi'.split('');
const bomb = levels
  .map((name, index) => {
    const before = levels[index - 1];
    const items = Array.from({ length: 9 }, () => (before === undefined ? '1' : `*${before}`));
    return `${name}: &${name} [${items.join(', ')}]`;
  })
  .join('\n');

describe('a file that means to exhaust its reader', () => {
  test('aliases of aliases are stopped where they pass the bound', () => {
    expect(firstProblem(bomb)).toBe(
      'f:5:28: aliases unfold into more than 50000 values, expected the values themselves',
    );
  });

  test.each([
    ['brackets', '['],
    ['braces', '{a: '],
    ['dashes', '- '],
    ['question marks', '? '],
  ])('%s inside each other are stopped at the level where it is too much', (_, piece) => {
    expect(firstProblem(piece.repeat(1_000_000))).toMatch(
      /^f:1:\d+: more than 60 levels stand inside each other/,
    );
  });

  test('indentation without end is stopped too', () => {
    const text = Array.from({ length: 500 }, (_, depth) => `${' '.repeat(depth)}a:\n`).join('');
    expect(firstProblem(text)).toMatch(/^f:6\d:\d+: more than 60 levels/);
  });

  test('a file that is too full is given up', () => {
    expect(firstProblem(`[${','.repeat(3_000_000)}`)).toMatch(/^f:1:\d+: the file is too full/);
  });

  test('a map of thousands of keys is still quick to read', () => {
    const text = Array.from({ length: 20_000 }, (_, index) => `key${index}: 1\n`).join('');
    expect(parseDocument(text, 'f').ok).toBe(true);
  });
});

describe('whatever the file holds', () => {
  const signs = fc.constantFrom(
    ...'{}[]:,-?&*!|>\'"%@`#\n\t ~<=.0123456789abcxyz\\/\r\u0000\u2028é'.split(''),
    '\n  ',
    ': ',
    '- ',
    '*a',
    '&a ',
    '.nan',
    '__proto__',
    '---\n',
    '...\n',
    '!!map ',
  );
  const garbage = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 200 }),
    fc.array(signs, { maxLength: 80 }).map((list) => list.join('')),
    fc.json().map((text) => text.slice(0, 300)),
  );

  test('parsing never throws, and every problem has a place or is about the whole', () => {
    fc.assert(
      fc.property(garbage, (text) => {
        const read = parseDocument(text, 'f');
        if (read.ok) return;
        expect(read.problems.length).toBeGreaterThan(0);
        for (const { line, column, found, expected } of read.problems) {
          expect(line === 0 ? column === 0 : line >= 1 && column >= 1).toBe(true);
          expect(line).toBeLessThanOrEqual(text.split(/\r\n|\n|\r/).length + 1);
          expect(found).not.toBe('');
          expect(expected).not.toBe('');
        }
      }),
      { numRuns: 3000 },
    );
  });

  test('what was written as JSON is read as it was', () => {
    fc.assert(
      fc.property(
        fc
          .jsonValue({ maxDepth: 5 })
          .filter(
            (value) => value !== null && !/__proto__|prototype|constructor/.test(JSON.stringify(value)),
          ),
        (value) => {
          const read = parseDocument(JSON.stringify(value), 'f');
          expect(read.ok && JSON.parse(JSON.stringify(read.value.value))).toEqual(
            JSON.parse(JSON.stringify(value)),
          );
        },
      ),
    );
  });

  test('a problem is one line that cannot move a cursor', () => {
    fc.assert(
      fc.property(garbage, (text) => {
        const read = parseDocument(`a: [${text}`, 'f\u001b[2J');
        const lines = read.ok ? [] : read.problems.map(describeProblem);
        for (const line of lines) expect(line).not.toMatch(/[\p{Cc}\u2028\u2029\u202e]/u);
      }),
    );
  });
});
