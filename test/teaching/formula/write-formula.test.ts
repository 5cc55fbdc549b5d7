import { describe, expect, test } from 'vitest';
import { plainAscii } from '../../../src/report/exports/plain-ascii.ts';
import { evaluate } from '../../../src/teaching/formula/evaluate.ts';
import { writeFormula, writeNumber } from '../../../src/teaching/formula/write-formula.ts';

describe('a formula as it is printed', () => {
  test.each([
    ['2*max(r+e,F/2)', '2·max(r + e, F/2)'],
    ['sqrt(a^2 + b^2)/2', '√(a² + b²)/2'],
    ['-v*sin(t)-w', '−v·sin(t) − w'],
    ['if(a <= -b, 1, 2)', 'if(a ≤ −b, 1, 2)'],
    ['h^(-mc)', 'h^(−mc)'],
    ['x^25', 'x^25'],
  ])('%s', (formula, printed) => {
    expect(writeFormula(formula)).toBe(printed);
  });

  test('numbers stand in place of names, in brackets where they are less than nothing', () => {
    expect(writeFormula('a - b*c', { a: 1, b: -2, c: 0.5 })).toBe('1 − (−2)·0.5');
    expect(writeFormula('max(a, b)', { a: -1, b: 2 })).toBe('max(−1, 2)');
    expect(writeFormula('a^2', { a: -3 })).toBe('(−3)²');
  });

  test('a function is no name', () => {
    expect(writeFormula('max(max, 1)', { max: 3 })).toBe('max(3, 1)');
  });
});

test('in plain characters it can be worked out again', () => {
  const formula = 'sqrt(a^2 + b^2)/2 - if(a >= b, -1, 1)*c';
  const values = { a: 3, b: 4, c: 5 };
  const again = plainAscii(writeFormula(formula));
  expect(evaluate(again, { values, definitions: [] })).toBe(evaluate(formula, { values, definitions: [] }));
});

test.each([
  [0.1 + 0.2, '0.3'],
  [1 / 3, '0.333333'],
  [-0.5, '−0.5'],
  [123456789, '123457000'],
  [2e-7, '0.0000002'],
])('%d is typed as %s', (value, typed) => {
  expect(writeNumber(value)).toBe(typed);
});
