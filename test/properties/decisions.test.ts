import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Catalog, Machine, Rotary } from '../../src/catalog/catalog.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from '../rules/example-shop.ts';
import { anyPart, anyRotary, strongMachine, strongRotary } from './random-shop.ts';

const RUNS = { numRuns: 40, seed: 20260103 };

const named = <Row extends { readonly id: string }>(rows: readonly Row[], name: string): Row[] =>
  rows.map((row, index) => ({ ...row, id: `${name}-${index}` }));

/** Parts small enough that many of these shops find something. */
const smallPart: fc.Arbitrary<Part> = anyPart.map((part) => ({
  ...part,
  size: [60, 50, 40] as const,
  depthTop: 10,
  depthSide: 10,
  holding: { ...part.holding, by: 'fixture' as const, diameter: 60, height: 30, mass: 2 },
  eccentricity: 0,
  diameter: 50,
  length: 60,
  tolerance: 0.3,
  cut: 'light' as const,
  contourCut: 'light' as const,
  drill: null,
}));

const anyShop = fc.record({
  parts: fc.array(smallPart, { minLength: 1, maxLength: 4 }),
  hours: fc.array(fc.integer({ min: 10, max: 2000 }), { minLength: 4, maxLength: 4 }),
  rotaries: fc.array(strongRotary, { minLength: 1, maxLength: 4 }),
  machines: fc.array(strongMachine, { minLength: 1, maxLength: 3 }),
  prices: fc.array(fc.integer({ min: 5000, max: 90000 }), { minLength: 8, maxLength: 8 }),
  budget: fc.integer({ min: 20000, max: 200000 }),
});

interface Shop {
  readonly parts: readonly Part[];
  readonly hours: readonly number[];
  readonly rotaries: readonly Rotary[];
  readonly machines: readonly Machine[];
  readonly prices: readonly number[];
  readonly budget: number;
}

function built(shop: Shop): { readonly answers: Answers; readonly catalog: Catalog } {
  const parts = shop.parts.map((part, index) => ({
    ...part,
    name: `Family ${index}`,
    yearly: { ...part.yearly, quantity: shop.hours[index] ?? 100 },
  }));
  const rotaries = named(shop.rotaries, 'rotary').map((row, at) => ({
    ...row,
    price: shop.prices[at] ?? 9000,
  }));
  const machines = named(shop.machines, 'mill').map((row, at) => ({
    ...row,
    price: shop.prices[at + 4] ?? 60000,
  }));
  return {
    answers: { ...EXAMPLE_ANSWERS, parts, money: { ...EXAMPLE_ANSWERS.money, budget: shop.budget } },
    catalog: { ...EXAMPLE_CATALOG, rotaries, machines },
  };
}

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
