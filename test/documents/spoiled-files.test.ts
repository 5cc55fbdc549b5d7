import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { catalogSchema } from '../../src/catalog/catalog-schema.ts';
import { describeProblem } from '../../src/documents/problem.ts';
import { readAnswers } from '../../src/questions/read-answers.ts';

const FIXTURES = join(import.meta.dirname, '..', 'fixtures');
const fixture = (name: string): unknown => parse(readFileSync(join(FIXTURES, name), 'utf8'));

type Path = readonly (string | number)[];

function pathsOf(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [
    path,
    ...Object.entries(value).flatMap(([key, each]) =>
      pathsOf(each, [...path, Array.isArray(value) ? Number(key) : key]),
    ),
  ];
}

function withValue(data: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined || typeof data !== 'object' || data === null) return value;
  if (Array.isArray(data))
    return data.map((each: unknown, index) => (index === step ? withValue(each, rest, value) : each));
  return { ...data, [step]: withValue(Reflect.get(data, step), rest, value) };
}

const spoiled = (data: unknown) =>
  fc
    .tuple(
      fc.constantFrom(...pathsOf(data).filter((path) => path.length > 0)),
      fc.oneof(
        fc.constantFrom(
          '',
          'unknown',
          'none',
          '-5',
          '1e999',
          'NaN',
          '[1, 2]',
          null,
          true,
          -1,
          0,
          1e300,
          5e-324,
          [],
          {},
          [2, 1],
          [1, 2],
        ),
        fc.jsonValue({ maxDepth: 2 }),
        fc.double({ noDefaultInfinity: true, noNaN: true }),
      ),
    )
    .map(([path, value]) => withValue(data, path, value));

test('answers with any one value spoiled are read, or every problem has its place and its words', () => {
  fc.assert(
    fc.property(spoiled(fixture('contract.answers.yaml')), (data) => {
      const text = JSON.stringify(data, null, 1);
      const read = readAnswers('a.json', text);
      for (const problem of read.ok ? [] : read.problems) {
        expect(problem.line).toBeGreaterThanOrEqual(1);
        expect(problem.line).toBeLessThanOrEqual(text.split('\n').length);
        expect(describeProblem(problem)).not.toMatch(/undefined|\[object|expected something else|Invalid/);
      }
      if (read.ok) expect(JSON.stringify(read.value.answers)).not.toMatch(/null(?!,"contour")/);
    }),
    { numRuns: 1500 },
  );
});

test('a catalog with any one value spoiled is read or refused, and never throws', () => {
  fc.assert(
    fc.property(
      spoiled(fixture('contract.catalog.yaml')),
      fc.constantFrom('mm' as const, 'inch' as const),
      (data, units) => {
        const result = catalogSchema(units).safeParse(data);
        if (!result.success) expect(result.error.issues.length).toBeGreaterThan(0);
      },
    ),
    { numRuns: 1500 },
  );
});
