import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { jsonReport } from '../../src/report/index.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from '../rules/example-shop.ts';
import { anyPart, anyRotary, strongMachine, strongRotary } from './random-shop.ts';

type Tree = { readonly [key: string]: unknown };

function put(tree: unknown, path: readonly string[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(tree))
    return tree.map((each, index) => (String(index) === key ? put(each, rest, value) : each));
  return { ...(tree as Tree), [key]: put((tree as Tree)[key], rest, value) };
}

/** Answers that may turn out anywhere between these shares of what they are. */
const OPENED = [
  ['parts', '0', 'size', '2'],
  ['parts', '0', 'size', '0'],
  ['parts', '1', 'holding', 'height'],
  ['parts', '0', 'depthSide'],
  ['tools', 'longest'],
  ['tools', 'shortest'],
  ['parts', '1', 'yearly', 'quantity'],
  ['money', 'budget'],
] as const;

const at = (tree: unknown, path: readonly string[]): number =>
  path.reduce<unknown>((found, key) => (found as Tree)[key], tree) as number;

const anyShop = fc.record({
  parts: fc.tuple(anyPart, anyPart),
  rotaries: fc.array(strongRotary, { minLength: 1, maxLength: 3 }),
  machines: fc.array(strongMachine, { minLength: 1, maxLength: 2 }),
  opened: fc.subarray([...OPENED], { minLength: 1, maxLength: 3 }),
  spread: fc.constantFrom(0.05, 0.2, 0.6),
  points: fc.array(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 3, maxLength: 3 }), {
    minLength: 3,
    maxLength: 3,
  }),
});

function built(parts: readonly Part[]): Answers {
  const plain = parts.map((part, index) => ({
    ...part,
    name: `Family ${index}`,
    shape: 'block' as const,
    size: [70, 60, 50] as const,
    holding: { ...part.holding, diameter: 80, height: 40, mass: 3 },
    depthSide: 20,
    eccentricity: 0,
    tolerance: 0.3,
    cut: 'light' as const,
    contourCut: 'light' as const,
    drill: null,
  }));
  return { ...EXAMPLE_ANSWERS, parts: plain, money: { ...EXAMPLE_ANSWERS.money, budget: 140000 } };
}

const passing = ({ arrangements }: Decision) => new Map(arrangements.map(({ id, passes }) => [id, passes]));

test('what is sure while something is unknown stays so once it is known', () => {
  let [open, recommended] = [0, 0];
  fc.assert(
    fc.property(anyShop, ({ parts, rotaries, machines, opened, spread, points }) => {
      const known = built(parts);
      const catalog: Catalog = {
        ...EXAMPLE_CATALOG,
        rotaries: rotaries.map((row, index) => ({
          ...row,
          id: `rotary-${index}`,
          price: 20000 + index * 7000,
        })),
        machines: machines.map((row, index) => ({ ...row, id: `mill-${index}` })),
      };
      const range = (path: readonly string[], share: number): number =>
        at(known, path) * (1 - spread + 2 * spread * share);
      const unsure = opened.reduce<unknown>(
        (tree, path) => put(tree, path, [range(path, 0), range(path, 1)]),
        known,
      ) as Answers;
      const before = decide(unsure, catalog, { all: true });
      if (before.outcome === 'open') open += 1;
      if (before.outcome === 'recommended') recommended += 1;
      for (const point of points) {
        const answers = opened.reduce<unknown>(
          (tree, path, index) => put(tree, path, range(path, point[index] ?? 0)),
          known,
        ) as Answers;
        const after = decide(answers, catalog, { all: true });
        const now = passing(after);
        for (const [id, passes] of passing(before)) {
          if (passes === 'yes') expect(now.get(id), `${id} passed for sure`).toBe('yes');
          if (passes === 'no') expect(now.get(id), `${id} could not pass`).toBe('no');
        }
        if (before.outcome === 'recommended') expect(after.recommended).toBe(before.recommended);
        if (before.outcome === 'none') expect(after.outcome).toBe('none');
        if (after.recommended !== null) expect(before.contenders).toContain(after.recommended);
      }
    }),
    { numRuns: 60, seed: 20260106 },
  );
  expect(open).toBeGreaterThan(3);
  expect(recommended).toBeGreaterThan(3);
});

test('catalog rows and answers full of gaps never break a decision, and no number in it is none', () => {
  const gaps = fc.subarray(
    ['swing', 'centerHeight', 'faceOffset', 'tilt', 'payload', 'base', 'hold', 'accuracy', 'price', 'mass'],
    {
      minLength: 1,
    },
  );
  const unknownRow = (row: Tree, keys: readonly string[]): Tree =>
    Object.fromEntries(
      Object.entries(row).map(([key, value]) => [key, keys.includes(key) ? emptied(value) : value]),
    );
  const emptied = (value: unknown): unknown =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.keys(value).map((key) => [key, 'unknown']))
      : 'unknown';
  fc.assert(
    fc.property(anyPart, anyRotary, gaps, fc.boolean(), (part, rotary, keys, blank) => {
      const row = unknownRow(rotary as unknown as Tree, keys);
      const fixed = { ...row, hold: keys.includes('hold') ? 'unknown' : row.hold };
      const catalog = { ...EXAMPLE_CATALOG, rotaries: [fixed] } as unknown as Catalog;
      const answers = blank
        ? {
            ...EXAMPLE_ANSWERS,
            parts: [{ ...part, size: ['unknown', 'unknown', 'unknown'] as const, cut: 'unknown' as const }],
          }
        : { ...EXAMPLE_ANSWERS, parts: [part] };
      const text = jsonReport(decide(answers, catalog, { all: true }));
      expect(text).not.toContain('NaN');
      expect(JSON.parse(text).format).toBe('fivesides-decision/1');
    }),
    { numRuns: 80, seed: 20260107 },
  );
});
