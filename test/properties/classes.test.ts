import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Machine, Rotary } from '../../src/catalog/catalog.ts';
import type { Part } from '../../src/questions/answers.ts';
import { CLASS_RULES } from '../../src/rules/classes/index.ts';
import { ROUTE_RULES } from '../../src/rules/classes/routes/index.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from '../rules/example-shop.ts';
import { anyPart, anyRotary, strongMachine, strongRotary } from './random-shop.ts';

const RUNS = { numRuns: 80, seed: 20260114 };

/** Parts large and small, musts among them, some with an unknown kind. */
const mixPart: fc.Arbitrary<Part> = fc
  .record({
    part: anyPart,
    small: fc.boolean(),
    must: fc.boolean(),
    hours: fc.integer({ min: 10, max: 2000 }),
    unknown: fc.constantFrom('none', 'none', 'motion', 'approaches', 'tolerance'),
  })
  .map(({ part, small, must, hours, unknown }) => ({
    ...part,
    ...(small
      ? {
          size: [60, 50, 40] as const,
          diameter: 50,
          length: 60,
          eccentricity: 0,
          depthTop: 10,
          depthSide: 10,
          tolerance: 0.4,
          cut: 'light' as const,
          contourCut: 'light' as const,
          drill: null,
          holding: { ...part.holding, diameter: 60, height: 30, mass: 2 },
        }
      : {}),
    must: must && small,
    yearly: { ...part.yearly, quantity: hours },
    ...(unknown === 'none' ? {} : { [unknown]: 'unknown' }),
  }));

const anyShop = fc.record({
  parts: fc.array(mixPart, { minLength: 1, maxLength: 4 }),
  rotaries: fc.array(fc.oneof(strongRotary, strongRotary, anyRotary), { minLength: 1, maxLength: 5 }),
  machines: fc.array(strongMachine, { minLength: 1, maxLength: 2 }),
  budget: fc.constantFrom<number | 'unknown'>(60000, 120000, 200000, 'unknown'),
  share: fc.constantFrom<number | 'unknown'>(0, 0.2, 0.5, 'unknown'),
  owned: fc.constantFrom('none', 'mill-0', 'unknown'),
  leastCoverage: fc.constantFrom(0.2, 0.5, 0.97),
});

function decided(shop: {
  readonly parts: readonly Part[];
  readonly rotaries: readonly Rotary[];
  readonly machines: readonly Machine[];
  readonly budget: number | 'unknown';
  readonly share: number | 'unknown';
  readonly owned: string;
  readonly leastCoverage: number;
}): Decision {
  const answers = {
    ...EXAMPLE_ANSWERS,
    parts: shop.parts.map((part, index) => ({ ...part, name: `Family ${index}` })),
    shop: { ...EXAMPLE_ANSWERS.shop, machine: shop.owned },
    work: { ...EXAMPLE_ANSWERS.work, threeAxisShare: shop.share },
    money: { ...EXAMPLE_ANSWERS.money, budget: shop.budget },
    assume: { leastCoverage: shop.leastCoverage },
  };
  const catalog = {
    ...EXAMPLE_CATALOG,
    rotaries: shop.rotaries.map((row, index) => ({ ...row, id: `rotary-${index}` })),
    machines: shop.machines.map((row, index) => ({ ...row, id: `mill-${index}` })),
  };
  return decide(answers, catalog, { traces: false });
}

/** Rules of which only one can be so: they lie on either side of one line, or share a number. */
const EXCLUSIVE: readonly (readonly string[])[] = [
  ['sides-tilt', 'sides-some-tilt', 'sides-around'],
  ['tilt-used', 'tilt-idle'],
  ['tilt-beyond', 'tilt-short', 'tilt-reaches'],
  ['swing-beyond', 'swing-short', 'swing-holds'],
  ['mass-beyond', 'mass-short', 'mass-holds'],
  ['moment-short', 'moment-holds'],
  ['strength-beyond', 'strength-short'],
  ['moving-indexed', 'positional'],
  ['moving-one-support', 'positional'],
  ['bar-fits', 'bar-little'],
  ['nose-takes-chucks', 'nose-missing'],
  ['spread-wide-open', 'spread-wide-closed', 'spread-narrow'],
  ['three-axis-often-light', 'three-axis-often-heavy', 'three-axis-seldom'],
  ['vises-fit', 'vises-missing'],
  ['lifts-off', 'stays-on'],
  ['catalog-none', 'none-passes', 'some-pass'],
  ['no-mill-owned', 'route-none', 'route-none-passes', 'route-some-pass'],
  ['one-axis-not-enough', 'one-axis-nearly', 'one-axis-enough'],
  ['route-covers-part', 'route-covers'],
  ['route-dearer', 'route-cheapest'],
];

test('rules that exclude each other never both speak surely, and where one is sure no other is open', () => {
  const ids = new Set<string>([...CLASS_RULES, ...ROUTE_RULES].map(({ id }) => id));
  for (const id of EXCLUSIVE.flat()) expect(ids.has(id)).toBe(true);
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { classes, route } = decided(shop);
      for (const row of [...classes, ...route.routes]) {
        const said = [...row.for, ...row.against];
        for (const group of EXCLUSIVE) {
          const own = said.filter(({ rule }) => group.includes(rule));
          if (own.some(({ sure }) => sure)) expect(own.map(({ rule }) => rule)).toHaveLength(1);
        }
      }
    }),
    RUNS,
  );
});

test('no class is without arguments, and what is ruled out is never recommended nor may it still win', () => {
  let recommended = 0;
  let ruledOut = 0;
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { classes, route, arrangements, contenders, recommended: winner } = decided(shop);
      expect(classes).toHaveLength(5);
      for (const row of [...classes, ...route.routes]) {
        expect(row.for.length + row.against.length).toBeGreaterThan(0);
        if (row.finding !== 'ruled out') continue;
        ruledOut += 1;
        // stronger than the winner alone: nothing of it passes, surely or perhaps
        expect(row.bestPasses === null || row.bestPasses === 'no').toBe(true);
      }
      for (const id of [winner, ...contenders]) {
        const found = arrangements.find((each) => each.id === id);
        if (found === undefined) continue;
        recommended += 1;
        expect(['suits', 'possible']).toContain(classes.find((row) => row.class === found.class)?.finding);
      }
    }),
    RUNS,
  );
  expect(recommended).toBeGreaterThan(10);
  expect(ruledOut).toBeGreaterThan(10);
});

test('every arrangement that the arguments name is listed', () => {
  fc.assert(
    fc.property(anyShop, (shop) => {
      const { classes, route, bigger, arrangements } = decided(shop);
      const listed = new Set(arrangements.map(({ id }) => id));
      const named = [
        ...[...classes, ...route.routes].flatMap(({ best }) => best ?? []),
        ...(route.ownMill?.takes ?? []).map(({ id }) => id),
        ...(bigger?.next == null ? [] : [bigger.next.best]),
      ];
      expect(named.filter((id) => !listed.has(id))).toEqual([]);
    }),
    { ...RUNS, numRuns: 25 },
  );
});
