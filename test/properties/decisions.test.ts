import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import { anyRotary } from './random-shop.ts';
import { anyShop, built } from './random-shops.ts';

const RUNS = { numRuns: 40, seed: 20260103 };

const summary = (answers: Answers, catalog: Catalog) => {
  const { outcome, recommended, arrangements, stages, runnersUp, nearestMisses } = decide(answers, catalog, {
    all: true,
  });
  const verdicts = arrangements.map(({ id, verdict, passes, measures, place, checks }) => ({
    id,
    verdict,
    passes,
    measures,
    place,
    checks: [...checks].sort((a, b) => `${a.check}|${a.part}`.localeCompare(`${b.check}|${b.part}`)),
  }));
  return { outcome, recommended, verdicts, stages, runnersUp: runnersUp.map(({ id }) => id), nearestMisses };
};

test('the order of parts and of catalog rows does not matter', () => {
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { answers, catalog } = built(shop);
      const turned = summary(
        { ...answers, parts: [...answers.parts].reverse() },
        { ...catalog, rotaries: [...catalog.rotaries].reverse(), machines: [...catalog.machines].reverse() },
      );
      expect(turned).toEqual(summary(answers, catalog));
    }),
    RUNS,
  );
});

test('more budget, or one more rotary, never loses a recommendation to none', () => {
  let recommended = 0;
  fc.assert(
    fc.property(anyShop, anyRotary, fc.integer({ min: 1, max: 100000 }), (shop, extra, more) => {
      const { answers, catalog } = built(shop);
      if (decide(answers, catalog).outcome === 'none') return;
      recommended += 1;
      const richer = { ...answers, money: { ...answers.money, budget: shop.budget + more } };
      expect(decide(richer, catalog).outcome).not.toBe('none');
      const larger = { ...catalog, rotaries: [...catalog.rotaries, { ...extra, id: 'one-more', price: 1 }] };
      expect(decide(answers, larger).outcome).not.toBe('none');
    }),
    RUNS,
  );
  expect(recommended).toBeGreaterThan(5);
});

test('with everything known the outcome is never open, and the winner passes and is dominated by none', () => {
  let seen = 0;
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { answers, catalog } = built(shop);
      // gaps in a catalog are not the point here: the random rows have none that decide
      const decision = decide(answers, catalog, { all: true });
      expect(decision.outcome).not.toBe('open');
      if (decision.recommended === null) return;
      seen += 1;
      const winner = decision.arrangements.find(({ id }) => id === decision.recommended);
      expect(winner?.passes).toBe('yes');
      expect(winner?.undominated).toBe(true);
    }),
    RUNS,
  );
  expect(seen).toBeGreaterThan(5);
});

test('every arrangement is counted once: passing, open, or dropped at one stage', () => {
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { answers, catalog } = built(shop);
      const { arrangements, stages, count } = decide(answers, catalog, { all: true });
      expect(arrangements.length).toBe(count);
      expect(stages[0]?.before).toBe(count);
      const left = arrangements.filter(({ passes }) => passes !== 'no').length;
      expect(stages.at(-1)?.after).toBe(left);
      for (const { passes, dropped } of arrangements) expect(dropped === null).toBe(passes !== 'no');
      for (const stage of stages) {
        const dropped = Object.values(stage.dropped).reduce((sum, each) => sum + (each ?? 0), 0);
        expect(stage.before - stage.after).toBe(dropped);
      }
    }),
    RUNS,
  );
});
