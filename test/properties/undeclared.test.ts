import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../src/rules/checks/index.ts';
import type { Case } from '../../src/rules/judging/case.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import { judge } from '../../src/rules/judging/outcome.ts';
import { type ExampleWorld, exampleWorld } from '../rules/example-shop.ts';
import { anyPart, anySetting, anyStand } from './random-shop.ts';
import { termsOf } from './terms-of.ts';

/** A formula sees its declared inputs only; here nothing else may reach it round about, through the case. */

type Tree = { readonly [key: string]: unknown };

/** Paths of all numbers in a tree. */
function numbersIn(tree: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof tree === 'number') return [path];
  if (typeof tree !== 'object' || tree === null) return [];
  return Object.entries(tree).flatMap(([key, value]) => numbersIn(value, [...path, key]));
}

function grown(tree: unknown, path: readonly string[], by: number): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return (tree as number) * by;
  if (Array.isArray(tree))
    return tree.map((each, index) => (String(index) === key ? grown(each, rest, by) : each));
  return { ...(tree as Tree), [key]: grown((tree as Tree)[key], rest, by) };
}

const shop = fc.record({
  part: anyPart,
  stand: anyStand,
  setting: anySetting,
});

/** All that the terms of a check read, by term and input. */
const readBy = (check: Check, of: Case): string =>
  JSON.stringify(
    termsOf(check, of).map((term) => [
      term.name,
      Object.entries(term.uses).map(([key, { input }]) => {
        const { low, high } = input.read(of);
        return [key, low, high];
      }),
    ]),
  );

describe.each(CHECKS.map((check): [string, Check] => [check.id, check]))('%s', (_id, check) => {
  test('a need or a have changes only with an input that its terms declare', () => {
    let changes = 0;
    fc.assert(
      fc.property(shop, fc.constantFrom(0.97, 1.02), ({ part, stand, setting }, by) => {
        const { rotary, machine, mounting } = stand;
        const rest = { ...setting, mounting };
        const before = firstCase(exampleWorld({ part, rotary, machine, ...rest }));
        if (!check.applies(before)) return;
        const was = judge(check, before);
        const read = readBy(check, before);
        const all = { part, rotary, machine } as Tree;
        for (const path of numbersIn(all)) {
          const after = firstCase(exampleWorld({ ...(grown(all, path, by) as object), ...rest }));
          if (!check.applies(after)) continue;
          const is = judge(check, after);
          if (is.comparison?.what !== was.comparison?.what) continue;
          if (is.need.high === was.need.high && is.have.low === was.have.low) continue;
          changes += 1;
          expect(readBy(check, after), `${path.join('.')} changes ${check.id} undeclared`).not.toBe(read);
        }
      }),
      { numRuns: 12, seed: 20260104 },
    );
    if (!YES_OR_NO.has(check.id)) expect(changes).toBeGreaterThan(0);
  });
});

/** They change with kinds, not with numbers. */
const YES_OR_NO: ReadonlySet<string> = new Set([
  'tool-center-point',
  'rotating-work-offset',
  'tilted-work-plane',
  'collet',
  'tailstock',
  'budget',
]);

function firstCase({ cases }: ExampleWorld): Case {
  const [first] = cases;
  if (first === undefined) throw new Error('no case');
  return first;
}
