import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Catalog } from '../../src/catalog/catalog.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement, Bounded } from '../../src/rules/decision.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_PART } from '../rules/example-shop.ts';
import { strongMachine, strongRotary } from './random-shop.ts';

const RUNS = { numRuns: 60, seed: 20260110 };

const cents = fc.integer({ min: 0, max: 9_000_000 }).map((each) => each / 100);
const minutes = fc.double({ min: 0.2, max: 60, noNaN: true });

const family: fc.Arbitrary<Part> = fc
  .record({
    quantity: fc.integer({ min: 1, max: 2000 }),
    lots: fc.integer({ min: 1, max: 50 }),
    setups: fc.integer({ min: 1, max: 7 }),
    setupMinutes: minutes,
    cycleMinutes: minutes,
    handlingMinutes: minutes,
    bottom: fc.boolean(),
    around: fc.boolean(),
    heavy: fc.boolean(),
  })
  .map(({ bottom, around, heavy, ...yearly }) => ({
    ...EXAMPLE_PART,
    size: [60, 50, 40] as const,
    tolerance: 0.3,
    holding: { ...EXAMPLE_PART.holding, diameter: 60, height: 30, mass: 2 },
    approaches: around ? (['around'] as const) : (['top', 'sides'] as const),
    mass: heavy ? 400 : 1,
    bottom,
    yearly,
  }));

const anyShop = fc.record({
  parts: fc.array(family, { minLength: 1, maxLength: 4 }),
  rotaries: fc.array(strongRotary, { minLength: 1, maxLength: 2 }),
  machines: fc.array(strongMachine, { minLength: 1, maxLength: 2 }),
  prices: fc.array(cents, { minLength: 8, maxLength: 8 }),
  rate: fc.integer({ min: 500, max: 20000 }).map((each) => each / 100),
  interest: fc.double({ min: 0, max: 0.2, noNaN: true }),
  visesWanted: fc.integer({ min: 0, max: 6 }),
  swap: fc.constantFrom('zero-point' as const, 'keyed' as const, 'trammed' as const),
});
type Shop = typeof anyShop extends fc.Arbitrary<infer Made> ? Made : never;

function built(shop: Shop): { readonly answers: Answers; readonly catalog: Catalog } {
  const at = (index: number): number => shop.prices[index] ?? 0;
  const parts = shop.parts.map((part, index) => ({ ...part, name: `Family ${index}` }));
  const { visesWanted, swap, rate, interest } = shop;
  return {
    answers: {
      ...EXAMPLE_ANSWERS,
      parts,
      work: { ...EXAMPLE_ANSWERS.work, visesWanted, swap },
      money: {
        ...EXAMPLE_ANSWERS.money,
        ...{ budget: 'unknown', shopRate: rate, interest },
        ...{ rigging: at(0), training: at(1), yearlyCosts: at(2) / 10, residual: at(3), plates: at(4) / 50 },
      },
    },
    catalog: {
      ...EXAMPLE_CATALOG,
      rotaries: shop.rotaries.map((row, index) => ({ ...row, id: `rotary-${index}`, price: at(index + 4) })),
      machines: shop.machines.map((row, index) => ({ ...row, id: `mill-${index}`, price: at(index + 6) })),
    },
  };
}

const arranged = (answers: Answers, catalog: Catalog): readonly Arrangement[] =>
  decide(answers, catalog, { all: true, traces: false }).arrangements;

function inCents(value: Bounded): number {
  if (typeof value !== 'number') throw new Error(`not one number: ${JSON.stringify(value)}`);
  const whole = Math.round(value * 100);
  expect(whole / 100, 'to the cent').toBe(value);
  return whole;
}
const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0);
const exact = (value: Bounded): number => (typeof value === 'number' ? value : Number.NaN);

test('items are the price, prices with rigging and training the capital, families the savings, to the cent', () => {
  let [saved, lost] = [0, 0];
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { answers, catalog } = built(shop);
      for (const { money, prices, measures } of arranged(answers, catalog)) {
        const items = money.capital.items.map(({ price }) => inCents(price));
        expect(sum(items)).toBe(inCents(money.capital.total));
        expect(sum(prices.map(({ price }) => inCents(price)))).toBe(inCents(measures.price));
        const added = inCents(answers.money.rigging as number) + inCents(answers.money.training as number);
        expect(inCents(measures.price) + added).toBe(inCents(money.capital.total));
        const families = money.families.map(({ gain }) => inCents(gain));
        expect(sum(families)).toBe(inCents(money.savings));
        const off = inCents(money.swapCost) + inCents(money.running.total);
        expect(inCents(money.savings) - off).toBe(inCents(money.gain));
        expect(sum(money.running.items.map(({ price }) => inCents(price)))).toBe(
          inCents(money.running.total),
        );
        if (inCents(money.gain) > 0) saved += 1;
        else lost += 1;
        expect(money.payback === null).toBe(inCents(money.gain) <= 0);
        expect(measures.payback).toEqual(money.payback);
        expect(measures.netPresentValue).toBe(money.netPresentValue);
      }
    }),
    RUNS,
  );
  expect(Math.min(saved, lost)).toBeGreaterThan(20);
});

test('hours then are hours now less what is saved, and never more', () => {
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { answers, catalog } = built(shop);
      for (const { money } of arranged(answers, catalog))
        for (const { hoursNow, hoursThen, hoursSaved } of money.families) {
          expect(exact(hoursSaved)).toBeGreaterThanOrEqual(0);
          expect(Math.abs(exact(hoursNow) - exact(hoursThen) - exact(hoursSaved))).toBeLessThan(1e-6);
        }
    }),
    RUNS,
  );
});

const byId = (all: readonly Arrangement[]) => new Map(all.map((each) => [each.id, each]));

test('a higher rate never saves less, and gains more wherever the swaps leave hours over', () => {
  fc.assert(
    fc.property(anyShop, fc.double({ min: 1.05, max: 3, noNaN: true }), (shop, times) => {
      const { answers, catalog } = built(shop);
      const richer = { ...answers, money: { ...answers.money, shopRate: shop.rate * times } };
      const after = byId(arranged(richer, catalog));
      for (const { id, money } of arranged(answers, catalog)) {
        const then = after.get(id)?.money;
        if (then === undefined) throw new Error(`${id} is gone`);
        expect(exact(then.savings)).toBeGreaterThanOrEqual(exact(money.savings));
        // a cent is lost in rounding where hardly anything is left over
        if (exact(money.hoursSaved) >= exact(money.swapHours))
          expect(exact(then.gain)).toBeGreaterThanOrEqual(exact(money.gain) - 0.01 * (shop.parts.length + 1));
      }
    }),
    RUNS,
  );
});

test('more parts never save fewer hours, and more years or less interest never make a gain worth less', () => {
  fc.assert(
    fc.property(anyShop, fc.double({ min: 1, max: 3, noNaN: true }), (shop, times) => {
      const { answers, catalog } = built(shop);
      const parts = answers.parts.map((part) => ({
        ...part,
        yearly: { ...part.yearly, quantity: (part.yearly.quantity as number) * times },
      }));
      const [before, busier] = [arranged(answers, catalog), byId(arranged({ ...answers, parts }, catalog))];
      const cheaper = byId(
        arranged({ ...answers, money: { ...answers.money, interest: shop.interest / 2 } }, catalog),
      );
      for (const { id, money } of before) {
        expect(exact(busier.get(id)?.money.hoursSaved ?? null)).toBeGreaterThanOrEqual(
          exact(money.hoursSaved) - 1e-6,
        );
        if (exact(money.gain) < 0) continue;
        expect(exact(cheaper.get(id)?.money.netPresentValue ?? null)).toBeGreaterThanOrEqual(
          exact(money.netPresentValue),
        );
      }
    }),
    RUNS,
  );
});

test('ranges hold what each value in them gives', () => {
  const within = (value: Bounded, range: Bounded): boolean => {
    const [low, high] = Array.isArray(range) ? range : [range, range];
    const at = value === null ? Number.POSITIVE_INFINITY : exact(value);
    const slack = 1e-9 * Math.abs(Number.isFinite(at) ? at : 0) + 0.005;
    return (
      at >= (low ?? Number.NEGATIVE_INFINITY) - slack && at <= (high ?? Number.POSITIVE_INFINITY) + slack
    );
  };
  const keys = ['shopRate', 'years', 'interest', 'rigging', 'training', 'yearlyCosts', 'residual'] as const;
  fc.assert(
    fc.property(
      anyShop,
      fc.subarray([...keys], { minLength: 1 }),
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 }),
      (shop, open, shares) => {
        const { answers, catalog } = built(shop);
        const at = (key: (typeof keys)[number]): number => answers.money[key] as number;
        const put = (
          value: (key: (typeof keys)[number], index: number) => Answers['money']['years'],
        ): Answers => ({
          ...answers,
          money: {
            ...answers.money,
            ...Object.fromEntries(open.map((key, index) => [key, value(key, index)])),
          },
        });
        const unsure = arranged(
          put((key) => [at(key) * 0.5, at(key) * 1.5]),
          catalog,
        );
        const known = byId(
          arranged(
            put((key, index) => at(key) * (0.5 + (shares[index] ?? 0))),
            catalog,
          ),
        );
        for (const { id, money } of unsure) {
          const one = known.get(id)?.money;
          if (one === undefined) throw new Error(`${id} is gone`);
          for (const key of ['gain', 'payback', 'netPresentValue', 'savings', 'residual'] as const)
            expect(within(one[key], money[key]), `${key} ${one[key]} in ${money[key]}`).toBe(true);
          for (const key of ['shopRate', 'hours'] as const)
            expect(within(one.breakEven[key], money.breakEven[key]), `break even ${key}`).toBe(true);
        }
      },
    ),
    RUNS,
  );
});

test('another mill that is the same but dearer, slower to pay and larger changes no recommendation', () => {
  let seen = 0;
  fc.assert(
    fc.property(anyShop, cents, (shop, more) => {
      const { answers, catalog } = built(shop);
      const { recommended } = decide(answers, catalog, { traces: false });
      if (recommended === null) return;
      seen += 1;
      const copies = catalog.machines.map((row) => ({
        ...row,
        id: `a-${row.id}`,
        price: (row.price as number) + 0.01 + more,
        footprint: [2500, 2200, 2700] as const,
      }));
      const larger = { ...catalog, machines: [...copies, ...catalog.machines] };
      expect(decide(answers, larger, { traces: false }).recommended).toBe(recommended);
    }),
    RUNS,
  );
  expect(seen).toBeGreaterThan(10);
});
