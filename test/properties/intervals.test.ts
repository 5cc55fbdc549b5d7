import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ExampleGiven } from '../../src/rules/checks/example.ts';
import { CHECKS } from '../../src/rules/checks/index.ts';
import type { Verdict } from '../../src/rules/decision.ts';
import { atMost } from '../../src/rules/judging/compare.ts';
import { judgeExample } from '../rules/example-shop.ts';
import { anyPart, anySetting, anyStand } from './random-shop.ts';

/** Which numeric answers of the part and the tools are made uncertain, how wide, and where the truth lies in them. */
const shop = fc.record({
  part: anyPart,
  stand: anyStand,
  setting: anySetting,
  tools: fc.record({
    shortest: fc.double({ min: 50, max: 100, noNaN: true }),
    longest: fc.double({ min: 110, max: 260, noNaN: true }),
    largestCutter: fc.double({ min: 6, max: 50, noNaN: true }),
  }),
  seed: fc.integer({ min: 1, max: 2 ** 31 - 2 }),
});

/** What a definite verdict promises of every point inside. A measure may turn out not to be needed. */
const ALLOWED: Readonly<Record<Verdict, readonly Verdict[]>> = {
  holds: ['holds'],
  'holds if': ['holds', 'holds if'],
  fails: ['fails'],
  open: ['holds', 'holds if', 'fails', 'open'],
};

/** Answers that may be a range without leaving what a part can be. */
const LEAVES: readonly string[] = [
  'size.0',
  'size.1',
  'size.2',
  'diameter',
  'length',
  'mass',
  'fill',
  'depthTop',
  'depthSide',
  'lowestSideFeature',
  'tolerance',
  'holding.diameter',
  'holding.height',
  'holding.mass',
  'eccentricity',
  'approaches.0.slant',
  'approaches.0.undercut',
  'approaches.1.slant',
  'approaches.1.undercut',
  'cut.ap',
  'cut.fz',
  'cut.vc',
  'contourCut.ap',
  'contour.feed',
  'contour.radius',
  'contour.chordError',
  'drill.diameter',
  'drill.feed',
  'drill.offset',
  'tools.shortest',
  'tools.longest',
  'tools.largestCutter',
];

function uniform(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

type Tree = Record<string, unknown>;

/** The tree with one leaf changed; where there is no number at the path, the tree as it is. */
function changed(tree: unknown, path: readonly string[], change: (value: number) => unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return typeof tree === 'number' ? change(tree) : tree;
  if (typeof tree !== 'object' || tree === null || !(key in tree)) return tree;
  if (Array.isArray(tree))
    return tree.map((each, index) => (String(index) === key ? changed(each, rest, change) : each));
  return { ...tree, [key]: changed((tree as Tree)[key], rest, change) };
}

/** Limits beyond which a value would be another kind of answer. */
function limits(path: string): readonly [low: number, high: number] {
  if (path.endsWith('slant')) return [1, 89];
  if (path.endsWith('undercut')) return [91, 125];
  if (path === 'fill') return [0.05, 1];
  return [0, Number.POSITIVE_INFINITY];
}

describe.each(CHECKS.map((check) => [check.id, check] as const))('%s', (_id, check) => {
  test('every point inside an interval agrees with a definite verdict', () => {
    let definite = 0;
    fc.assert(
      fc.property(shop, ({ part, stand, setting, tools, seed }) => {
        const next = uniform(seed);
        const base = { ...setting, ...stand };
        let wide: Tree = { part, tools };
        const points: Tree[] = [wide, wide, wide, wide];
        const spread = [0.02, 0.1, 0.4][Math.floor(next() * 3)] ?? 0.1;
        for (const leaf of LEAVES.filter(() => next() < 0.25)) {
          const path = leaf.startsWith('tools.') ? leaf.split('.') : ['part', ...leaf.split('.')];
          const ends = (value: number): readonly [number, number] => {
            const [low, high] = limits(leaf);
            const by = Math.max(Math.abs(value), 1) * spread;
            return [Math.max(low, value - by * next()), Math.min(high, value + by * next())];
          };
          let chosen: readonly [number, number] | null = null;
          wide = changed(wide, path, (value) => {
            chosen = ends(value);
            return chosen;
          }) as Tree;
          const range = chosen as readonly [number, number] | null;
          if (range === null) continue;
          for (const [index, point] of points.entries()) {
            const at = next();
            const within =
              at < 0.3 ? range[0] : at > 0.7 ? range[1] : range[0] + (range[1] - range[0]) * next();
            points[index] = changed(point, path, () => within) as Tree;
          }
        }
        const whole = judgeExample(check, { ...base, ...wide } as ExampleGiven);
        if (whole.verdict !== 'open') definite += 1;
        for (const point of points) {
          const found = judgeExample(check, { ...base, ...point } as ExampleGiven);
          expect(
            ALLOWED[whole.verdict],
            `${whole.verdict} became ${found.verdict} at ${JSON.stringify(point)}`,
          ).toContain(found.verdict);
          if (whole.comparison !== null && found.comparison?.what === whole.comparison.what) {
            expect(
              atMost(whole.need.low, found.need.low),
              `need ${found.need.low} below ${whole.need.low}`,
            ).toBe(true);
            expect(
              atMost(found.need.high, whole.need.high),
              `need ${found.need.high} above ${whole.need.high}`,
            ).toBe(true);
          }
        }
      }),
      { numRuns: 150, seed: 20260102 },
    );
    expect(definite).toBeGreaterThan(0);
  });
});
