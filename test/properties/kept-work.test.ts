import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import { runningOf, standingOf } from '../../src/rules/standing.ts';
import { demoDecisions } from '../report/demo-decisions.ts';
import { EXAMPLE_ANSWERS } from '../rules/example-shop.ts';
import { anyShop, built, smallPart } from './random-shops.ts';

const RUNS = { numRuns: 25, seed: 20260712 };

/** A change of one thing, as somebody at the interview makes it. */
const change: fc.Arbitrary<(answers: Answers) => Answers> = fc.oneof(
  fc.tuple(fc.nat(3), smallPart).map(
    ([at, part]) =>
      (answers: Answers): Answers => ({
        ...answers,
        parts: answers.parts.map((old, index) => (index === at ? { ...part, name: old.name } : old)),
      }),
  ),
  fc
    .tuple(
      fc.nat(3),
      fc.constantFrom('depthTop' as const, 'tolerance' as const, 'eccentricity' as const),
      fc.constantFrom('unknown' as const, 4, 12),
    )
    .map(
      ([at, key, value]) =>
        (answers: Answers): Answers => ({
          ...answers,
          parts: answers.parts.map((part, index): Part => (index === at ? { ...part, [key]: value } : part)),
        }),
    ),
  fc.nat(3).map(
    (at) =>
      (answers: Answers): Answers => ({
        ...answers,
        parts: answers.parts.map((part, index) =>
          index === at ? { ...part, must: !part.must, yearly: { ...part.yearly, quantity: 77 } } : part,
        ),
      }),
  ),
  fc.integer({ min: 60, max: 260 }).map(
    (longest) =>
      (answers: Answers): Answers => ({ ...answers, tools: { ...answers.tools, longest } }),
  ),
  fc.constantFrom('unknown' as const, 20_000, 150_000).map(
    (budget) =>
      (answers: Answers): Answers => ({ ...answers, money: { ...answers.money, budget } }),
  ),
  fc.constantFrom('unknown' as const, 2500, 9000).map(
    (ceiling) =>
      (answers: Answers): Answers => ({
        ...answers,
        shop: { ...answers.shop, ceiling, floorRating: 'unknown' },
      }),
  ),
  fc.constantFrom(0, 3, 9).map(
    (switchesPerWeek) =>
      (answers: Answers): Answers => ({
        ...answers,
        work: { ...answers.work, switchesPerWeek, visesWanted: 2 },
      }),
  ),
  fc.constantFrom('by-hand' as const, 'pallet' as const).map(
    (loading) =>
      (answers: Answers): Answers => ({ ...answers, work: { ...answers.work, loading } }),
  ),
  fc.constantFrom('unknown' as const, EXAMPLE_ANSWERS.shop.lifting).map(
    (lifting) =>
      (answers: Answers): Answers => ({ ...answers, shop: { ...answers.shop, lifting } }),
  ),
  fc.constant((answers: Answers): Answers => ({ ...answers, assume: { ...answers.assume, approach: 40 } })),
);

test('a decision after many others on the same catalog is the one that is made afresh, to the last bit', () => {
  fc.assert(
    fc.property(anyShop, fc.array(change, { minLength: 2, maxLength: 6 }), (shop, changes) => {
      const { answers, catalog } = built(shop);
      let now = answers;
      decide(now, catalog, { all: true });
      for (const each of changes) {
        now = each(now);
        const after = decide(now, catalog, { all: true });
        // the same rows in another catalog: nothing is known of it yet
        const afresh = decide(now, { ...catalog }, { all: true });
        expect(JSON.stringify({ ...after, inputs: null })).toBe(JSON.stringify({ ...afresh, inputs: null }));
      }
    }),
    RUNS,
  );
});

test('what is found in a hurry after many changes is what a full judgment finds of those that may pass', () => {
  fc.assert(
    fc.property(anyShop, fc.array(change, { minLength: 2, maxLength: 6 }), (shop, changes) => {
      const { answers, catalog } = built(shop);
      let now = answers;
      for (const each of [(same: Answers) => same, ...changes]) {
        now = each(now);
        const quick = runningOf(now, catalog);
        const full = standingOf(now, { ...catalog });
        expect(quick.running).toEqual(full.running);
        expect([quick.outcome, quick.ranking.winner, quick.ranking.contenders]).toEqual([
          full.outcome,
          full.ranking.winner,
          full.ranking.contenders,
        ]);
      }
    }),
    RUNS,
  );
});

test.each(demoDecisions())(
  '%s: what is still running is found among itself alone, with the same winner',
  (_, { inputs }) => {
    const { answers, catalog } = inputs;
    const whole = standingOf(answers, catalog);
    const ids = new Set(whole.running.map(({ id }) => id));
    const among = runningOf(answers, catalog, ids);
    expect(among.running).toEqual(whole.running);
    expect([among.outcome, among.ranking.winner, among.ranking.contenders]).toEqual([
      whole.outcome,
      whole.ranking.winner,
      whole.ranking.contenders,
    ]);
  },
);
