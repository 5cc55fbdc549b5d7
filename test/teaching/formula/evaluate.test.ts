import fc from 'fast-check';
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/teaching/formula/evaluate.ts';
import { expectClose } from '../../close-to.ts';

const scope = { values: { r: 50, e: 0, F: 90, tilt: 30 }, definitions: [] };
const worth = (formula: string): number => evaluate(formula, scope);

describe('a formula comes to its number', () => {
  test.each([
    ['2*max(r + e, F/2)', 100],
    ['-2^2', -4],
    ['2^-1', 0.5],
    ['2 - 3 - 4', -5],
    ['12/2/3', 2],
    ['(1 + 2)*3', 9],
    ['sqrt(3^2 + 4^2)', 5],
    ['sin(tilt)', 0.5],
    ['cos(90)', 0],
    ['atan2(1, 1)', 45],
    ['if(tilt <= 30, 1, 2)', 1],
    ['if(tilt > 30, 1, if(r == 50, 3, 4))', 3],
    ['min(3, floor(2.9), ceil(1.1))', 2],
    ['1e3 + .5*2', Number.NaN],
  ] as const)('%s', (formula, value) => {
    if (Number.isNaN(value)) expect(() => worth(formula)).toThrow(SyntaxError);
    else expectClose(worth(formula), value, { absolute: 1e-12 });
  });

  test('a function of its own', () => {
    const definitions = [{ name: 'twice', of: ['x'], formula: '2*x', words: '' }];
    expect(evaluate('twice(r + 1)', { ...scope, definitions })).toBe(102);
  });
});

test.each(['2*', '(1', '1)', 'max(1,', '2 3', 'a b'])('%s is no formula', (formula) => {
  expect(() => evaluate(formula, { ...scope, values: { ...scope.values, a: 1, b: 1 } })).toThrow(SyntaxError);
});

test.each(['unknown + 1', 'constructor', 'toString(1)', 'cube(2)'])('%s stands for nothing', (formula) => {
  expect(() => worth(formula)).toThrow();
});

test('sums, products and powers come to what another program makes of them', () => {
  const math = create(all as FactoryFunctionMap);
  const number = fc.integer({ min: 0, max: 9 }).map(String);
  const formula = fc.letrec<{ any: string; pair: string; wrapped: string }>((tie) => ({
    any: fc.oneof({ depthSize: 'small' }, number, tie('pair'), tie('wrapped')),
    pair: fc
      .tuple(tie('any'), fc.constantFrom('+', '-', '*', '/'), tie('any'))
      .map(([a, sign, b]) => `${a} ${sign} ${b}`),
    wrapped: fc
      .tuple(fc.constantFrom('(', '-(', 'max(1, ', 'min(2, ', 'abs('), tie('any'))
      .map(([open, inner]) => `${open}${inner})`),
  })).any;
  fc.assert(
    fc.property(formula, (text) => {
      const theirs: unknown = math.evaluate(text);
      fc.pre(typeof theirs === 'number' && Number.isFinite(theirs));
      expectClose(evaluate(text, { values: {}, definitions: [] }), theirs, { percent: 1e-9 });
    }),
    { numRuns: 300 },
  );
});
