import { describe, expect, test } from 'vitest';
import { smallMarket } from '../../../bench/market/small-market.ts';
import { CHECKS } from '../../../src/rules/checks/index.ts';
import type { Check } from '../../../src/rules/judging/check.ts';
import { demoCatalog } from '../../catalog-demo/demo.ts';
import { type Held, resultsDiffer, verdictsHeld } from './held-against.ts';

/** Ten thousand of them are held by `npm run held`, which takes hours. */
const MARKETS = 60;

/** The two judges once differed on these. */
const DIFFERED = [122, 367, 500, 5267, 5438, 6492];

const demo = demoCatalog();
const seeds = Array.from({ length: MARKETS }, (_, seed) => seed + 1);

describe('what the tables say of a market is what the plain judge says', () => {
  test(`verdicts of every check, in three values, on ${MARKETS} small markets with gaps`, {
    timeout: 240_000,
  }, () => {
    const held: Held = { counts: {}, differ: [] };
    for (const seed of seeds) verdictsHeld(smallMarket(demo, seed), held, 6);
    expect(held.differ).toEqual([]);
    const all = Object.values(held.counts);
    // the comparison means something: most checks come out in all three ways
    expect(all.length).toBeGreaterThan(30);
    const inThreeWays = all.filter((each) => Object.keys(each).length === 3);
    expect(inThreeWays.length).toBeGreaterThan(18);
  });

  test('who wins, who may, and what is left', { timeout: 240_000 }, () => {
    for (const seed of [...seeds, ...DIFFERED])
      expect({ seed, differ: resultsDiffer(smallMarket(demo, seed)) }).toEqual({ seed, differ: [] });
  });

  test.each(['payload', 'table-load', 'reach-low', 'spindle-torque'] as const)(
    'a wrong direction, planted in %s, is found',
    { timeout: 480_000 },
    (id) => {
      const turned = CHECKS.map(
        (check): Check =>
          check.id === id ? { ...check, sense: check.sense === 'at-most' ? 'at-least' : 'at-most' } : check,
      );
      const held: Held = { counts: {}, differ: [] };
      for (const seed of seeds.slice(0, 12)) verdictsHeld(smallMarket(demo, seed), held, 6, turned);
      expect(held.differ.length).toBeGreaterThan(0);
      expect(held.differ.every((each) => each.startsWith(id))).toBe(true);
    },
  );
});
