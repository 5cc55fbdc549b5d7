import { describe, expect, test } from 'vitest';
import type { Catalog, Machine } from '../../src/catalog/catalog.ts';
import { decide } from '../../src/rules/decide.ts';
import type { Arrangement, PriceItem } from '../../src/rules/decision.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from './example-shop.ts';

const PARTS = [{ ...EXAMPLE_PART, tolerance: 0.5 }];

function priced(
  machine: Partial<Machine>,
  answers = EXAMPLE_ANSWERS,
  catalog: Catalog = EXAMPLE_CATALOG,
): Arrangement {
  const machines = [{ ...EXAMPLE_MACHINE, ...machine }];
  const { arrangements } = decide({ ...answers, parts: PARTS }, { ...catalog, machines }, { all: true });
  const [first] = arrangements;
  if (first === undefined) throw new Error('no arrangement');
  return first;
}

const priceOf = ({ prices }: Arrangement, item: PriceItem['item']) =>
  prices.find((each) => each.item === item)?.price;
const total = ({ prices }: Arrangement) => prices.reduce((sum, { price }) => sum + Number(price), 0);

describe('the price of an arrangement', () => {
  test('drives are bought for the axes that have none yet', () => {
    const drives = (fitted: number, offered: number) =>
      priceOf(priced({ axisDrives: { fitted, offered, priceEach: 4200 } }), 'axis-drives');
    expect(drives(0, 2)).toBe(8400);
    expect(drives(1, 1)).toBe(4200);
    expect(drives(2, 0)).toBeUndefined();
  });

  test('a mill that is owned costs nothing, and neither does a rotary that is included', () => {
    const owned = { ...EXAMPLE_ANSWERS, shop: { ...EXAMPLE_ANSWERS.shop, machine: EXAMPLE_MACHINE.id } };
    expect(priceOf(priced({}, owned), 'machine')).toBe(0);
    expect(priceOf(priced({}), 'machine')).toBe(72000);
    expect(priceOf(priced({ kind: 'convertible', rotaryIncluded: EXAMPLE_ROTARY.id }), 'rotary')).toBe(0);
    expect(priceOf(priced({}), 'rotary')).toBe(28500);
  });

  test('what is bought adds up to the measure', () => {
    const slots = { count: 5, width: 14, pitch: 63, center: true, along: 'x' } as const;
    const { table } = EXAMPLE_MACHINE;
    if (table === null) throw new Error('the example has a table');
    const onPlate = priced({ table: { ...table, slots } });
    expect(priceOf(onPlate, 'plates')).toBe(900);
    for (const each of [onPlate, priced({})]) expect(total(each)).toBe(each.measures.price);
  });

  test('a plate costs what the shop says, and what is ordinary where it says nothing', () => {
    const { table } = EXAMPLE_MACHINE;
    if (table === null) throw new Error('the example has a table');
    const other = { table: { ...table, slots: { ...table.slots, width: 14 } } };
    const paying = (plates: number | 'unknown') =>
      priceOf(priced(other, { ...EXAMPLE_ANSWERS, money: { ...EXAMPLE_ANSWERS.money, plates } }), 'plates');
    expect(paying(1234.56)).toBe(1234.56);
    expect(paying('unknown')).toBe(900);
  });
});
