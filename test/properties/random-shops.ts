import fc from 'fast-check';
import type { Catalog, Machine, Rotary } from '../../src/catalog/catalog.ts';
import type { Answers, Part } from '../../src/questions/answers.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG } from '../rules/example-shop.ts';
import { anyPart, strongMachine, strongRotary } from './random-shop.ts';

const named = <Row extends { readonly id: string }>(rows: readonly Row[], name: string): Row[] =>
  rows.map((row, index) => ({ ...row, id: `${name}-${index}` }));

/** Parts small enough that many of these shops find something. */
export const smallPart: fc.Arbitrary<Part> = anyPart.map((part) => ({
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

export const anyShop = fc.record({
  parts: fc.array(smallPart, { minLength: 1, maxLength: 4 }),
  hours: fc.array(fc.integer({ min: 10, max: 2000 }), { minLength: 4, maxLength: 4 }),
  rotaries: fc.array(strongRotary, { minLength: 1, maxLength: 4 }),
  machines: fc.array(strongMachine, { minLength: 1, maxLength: 3 }),
  prices: fc.array(fc.integer({ min: 5000, max: 90000 }), { minLength: 8, maxLength: 8 }),
  budget: fc.integer({ min: 20000, max: 200000 }),
});

export interface Shop {
  readonly parts: readonly Part[];
  readonly hours: readonly number[];
  readonly rotaries: readonly Rotary[];
  readonly machines: readonly Machine[];
  readonly prices: readonly number[];
  readonly budget: number;
}

/** Answers and catalog of a shop. */
export function built(shop: Shop): { readonly answers: Answers; readonly catalog: Catalog } {
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
