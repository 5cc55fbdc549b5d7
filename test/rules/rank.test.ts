import { describe, expect, test } from 'vitest';
import type { Interval } from '../../src/quantities/interval.ts';
import type { Measure } from '../../src/questions/answers.ts';
import { decide } from '../../src/rules/decide.ts';
import { dominates } from '../../src/rules/weighing/dominance.ts';
import { inOrder, rankBy } from '../../src/rules/weighing/rank.ts';
import type { Ranked } from '../../src/rules/weighing/scores.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_CATALOG, EXAMPLE_MACHINE } from './example-shop.ts';

const BAND = 0.05;

type Given = Partial<Record<Measure, number | readonly [number, number] | null>>;

function ranked(id: string, given: Given, surely = true): Ranked {
  const read = (measure: Measure): Interval | null => {
    const value = given[measure] ?? null;
    if (value === null) return null;
    return typeof value === 'number' ? { low: value, high: value } : { low: value[0], high: value[1] };
  };
  const measures = {
    coverage: read('coverage'),
    viseStations: read('viseStations'),
    payback: read('payback'),
    price: read('price'),
    floorArea: read('floorArea'),
    swapHours: read('swapHours'),
    margin: read('margin'),
  };
  return { id, surely, measures };
}

const winner = (order: readonly Measure[], ...field: readonly Ranked[]) => rankBy(order, BAND, field).winner;

describe('measure by measure', () => {
  test('within the band of the best it is level, and the next measure decides', () => {
    const a = ranked('a', { coverage: 1, price: 100 });
    expect(winner(['coverage', 'price'], a, ranked('b', { coverage: 0.95, price: 90 }))).toBe('b');
    expect(winner(['coverage', 'price'], a, ranked('b', { coverage: 0.94, price: 90 }))).toBe('a');
  });

  test('less is better for a price, with the band above the best', () => {
    const cheap = ranked('cheap', { price: 100, margin: 0.1 });
    expect(winner(['price', 'margin'], cheap, ranked('level', { price: 105, margin: 0.2 }))).toBe('level');
    expect(winner(['price', 'margin'], cheap, ranked('dear', { price: 106, margin: 0.2 }))).toBe('cheap');
  });

  test('a best of zero or below lets only exact ties stay', () => {
    const none = ranked('none', { swapHours: 0, price: 200 });
    expect(winner(['swapHours', 'price'], none, ranked('some', { swapHours: 0.001, price: 100 }))).toBe(
      'none',
    );
    expect(winner(['swapHours', 'price'], none, ranked('also none', { swapHours: 0, price: 100 }))).toBe(
      'also none',
    );
    const loss = ranked('loss', { margin: -0.1, price: 200 });
    expect(winner(['margin', 'price'], loss, ranked('worse', { margin: -0.101, price: 100 }))).toBe('loss');
  });

  test('a measure that is not there ranks last', () => {
    expect(winner(['payback'], ranked('a', { payback: null }), ranked('b', { payback: 9 }))).toBe('b');
  });

  test('what is still level goes by the exact measures in the same order, then by id', () => {
    const b = ranked('b', { coverage: 0.99, price: 100 });
    expect(winner(['coverage', 'price'], b, ranked('a', { coverage: 0.98, price: 98 }))).toBe('b');
    expect(winner(['coverage', 'price'], b, ranked('a', { coverage: 0.99, price: 100 }))).toBe('a');
  });

  test('the order of the field does not matter', () => {
    const field = [
      ranked('a', { coverage: 0.9, price: 90 }),
      ranked('b', { coverage: 1, price: 120 }),
      ranked('c', { coverage: 0.97, price: 110 }),
    ];
    const there = inOrder(['coverage', 'price'], BAND, field, 3);
    expect(inOrder(['coverage', 'price'], BAND, [...field].reverse(), 3)).toEqual(there);
    expect(there).toEqual(['c', 'b', 'a']);
  });
});

describe('on intervals', () => {
  test('a winner wins for every value; otherwise whoever may still win is a contender', () => {
    const sure = ranked('sure', { coverage: 1, price: 100 });
    const cheaper = ranked('perhaps cheaper', { coverage: 1, price: [90, 130] });
    const ranking = rankBy(['coverage', 'price'], BAND, [sure, cheaper]);
    expect(ranking.winner).toBeNull();
    expect([...ranking.contenders].sort()).toEqual(['perhaps cheaper', 'sure']);
    expect(winner(['coverage', 'price'], sure, ranked('dearer', { coverage: 1, price: [110, 130] }))).toBe(
      'sure',
    );
  });

  test('one that perhaps does not pass never wins, and never stands in for the best', () => {
    const open = ranked('open', { coverage: 1, price: 50 }, false);
    const sure = ranked('sure', { coverage: 0.9, price: 100 });
    expect(winner(['coverage', 'price'], open, sure)).toBeNull();
    expect(winner(['coverage', 'price'], ranked('open', { coverage: 0.5, price: 50 }, false), sure)).toBe(
      'sure',
    );
  });
});

test('to dominate is to be at least as good everywhere and better somewhere', () => {
  const a = ranked('a', { coverage: 1, price: 100 });
  expect(dominates(['coverage', 'price'], a, ranked('b', { coverage: 1, price: 110 }))).toBe(true);
  expect(dominates(['coverage', 'price'], a, ranked('b', { coverage: 1, price: 100 }))).toBe(false);
  expect(dominates(['coverage', 'price'], a, ranked('b', { coverage: 1, price: [95, 110] }))).toBe(false);
});

test('vises beyond those that are wanted do not make a larger machine win', () => {
  const large = {
    ...EXAMPLE_MACHINE,
    id: 'large',
    table: { ...EXAMPLE_MACHINE.table, size: [1900, 600] },
    travel: [1800, 600, 510],
    price: 110000,
  } as const;
  const catalog = { ...EXAMPLE_CATALOG, machines: [EXAMPLE_MACHINE, large] } as typeof EXAMPLE_CATALOG;
  const wanting = (visesWanted: number | 'unknown') =>
    decide({ ...EXAMPLE_ANSWERS, work: { ...EXAMPLE_ANSWERS.work, visesWanted } }, catalog).recommended;
  expect(wanting(1)).toMatch(/^example-mill/);
  expect(wanting(6)).toMatch(/^large/);
  expect(wanting('unknown')).toMatch(/^large/);
});
