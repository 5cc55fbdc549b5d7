import { describe, expect, test } from 'vitest';
import { marketOf } from '../../bench/market/market.ts';
import { smallMarket } from '../../bench/market/small-market.ts';
import { missingValues } from '../../src/catalog/missing.ts';
import { readCarriedCatalog } from '../../src/catalog/read-carried.ts';
import { readCarriedAnswers } from '../../src/questions/read-carried.ts';
import { candidatesOf } from '../../src/rules/arranging/candidates.ts';
import { demoCatalog } from '../catalog-demo/demo.ts';

const DEMO = demoCatalog();
const seeds = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index + 1);

describe('small markets', () => {
  test('are the same for the same seed, and files that read back as they were', () => {
    for (const seed of seeds(60)) {
      const market = smallMarket(DEMO, seed);
      expect(smallMarket(DEMO, seed)).toEqual(market);
      const catalog = readCarriedCatalog(market.catalog, 'market');
      expect(catalog.ok ? catalog.value : catalog.problems).toEqual(market.catalog);
      const answers = readCarriedAnswers(market.answers, 'shop', market.catalog);
      expect(answers.ok ? answers.value : answers.problems).toEqual(market.answers);
    }
  });

  test('are of every class and mounting, some with nothing unknown', () => {
    const markets = seeds(60).map((seed) => smallMarket(DEMO, seed));
    const candidates = markets.flatMap(({ catalog }) => candidatesOf(catalog));
    expect(new Set(candidates.map(({ rotary }) => rotary.class)).size).toBe(5);
    expect(new Set(candidates.map(({ mounting }) => mounting)).size).toBe(5);
    const whole = markets.filter(({ catalog }) => missingValues(catalog).length === 0);
    expect(whole.length).toBeGreaterThan(5);
    expect(whole.length).toBeLessThan(55);
  });
});

test('a large market lacks nothing, and begins with the smaller one of the same seed', () => {
  const large = marketOf(DEMO, { machines: 300, rotaries: 120, families: 40, seed: 3 });
  const small = marketOf(DEMO, { machines: 20, rotaries: 60, families: 5, seed: 3 });
  expect(missingValues(large.catalog)).toEqual([]);
  expect(new Set(large.catalog.machines.map(({ id }) => id)).size).toBe(300);
  expect(new Set(large.catalog.rotaries.map(({ id }) => id)).size).toBe(120);
  expect(new Set(large.answers.parts.map(({ name }) => name)).size).toBe(40);
  expect(large.catalog.machines.slice(0, 20)).toEqual(small.catalog.machines);
  expect(large.catalog.rotaries.slice(0, 60)).toEqual(small.catalog.rotaries);
  expect(large.answers.parts.slice(0, 5)).toEqual(small.answers.parts);
});
