import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Catalog } from '../../../src/catalog/catalog.ts';
import { doubtsIn } from '../../../src/catalog/plausible/doubts-in.ts';
import { MACHINE_RULES, ROTARY_RULES, TABLE_RULES } from '../../../src/catalog/plausible/index.ts';
import type { PlausibleRule } from '../../../src/catalog/plausible/rule.ts';
import { readCatalogFiles } from '../../../src/catalog/read.ts';
import { describeProblem } from '../../../src/documents/problem.ts';
import { DEMO_FOLDER, demoCatalog } from '../../catalog-demo/demo.ts';
import { SPOILED_MACHINES, SPOILED_ROTARIES, SPOILED_TABLES, type Spoiled } from './spoiled.ts';

const catalog: Catalog = demoCatalog();
const around = (pricePerKilogram: number) => ({
  say: (value: number, unit: string) => `${value} ${unit}`,
  pricePerKilogram,
});

const pathOf = (path: readonly (string | number)[]): string =>
  path.reduce<string>(
    (text, step) =>
      typeof step === 'number' ? `${text}[${step}]` : `${text}${text === '' ? '' : '.'}${step}`,
    '',
  );

function holds<Row>(
  rules: readonly PlausibleRule<Row>[],
  rows: readonly (Row & { readonly id: string })[],
  spoiled: readonly Spoiled<Row>[],
  pricePerKilogram: number,
): void {
  test('each rule has a row that breaks it, and a reason and a source', () => {
    expect(spoiled.map(({ rule }) => rule).toSorted()).toEqual(rules.map(({ id }) => id).toSorted());
    expect(rules.filter(({ reason, source }) => reason === '' || source === '')).toEqual([]);
  });

  test.each(spoiled)(
    '$rule doubts $path, and not the row as it was',
    ({ rule, of, spoil, path, perhaps }) => {
      const row = rows.find(({ id }) => id === of);
      const own = rules.find(({ id }) => id === rule);
      if (row === undefined || own === undefined) throw new Error(`no row ${of}, or no rule ${rule}`);
      expect(own.doubts(row, around(pricePerKilogram))).toEqual([]);
      const doubts = own.doubts(spoil(row), around(pricePerKilogram));
      expect(doubts.map((each) => [pathOf(each.path), each.perhaps])).toEqual([[path, perhaps]]);
    },
  );

  test('what is not known breaks nothing', () => {
    for (const row of rows.map((each) => forgotten(each)))
      for (const rule of rules)
        expect([rule.id, rule.doubts(row, around(pricePerKilogram))]).toEqual([rule.id, []]);
  });
}

/** The row with every number in it unknown. */
function forgotten<Row>(value: Row): Row {
  const without = (each: unknown, key: string): unknown => {
    if (typeof each === 'number') return 'unknown';
    if (key === 'housing' || key === 'tailstock' || key === 'pitches') return null;
    if (key === 'clearance') return [];
    if (Array.isArray(each) && each.length === 2 && key !== 'size') return 'unknown';
    if (Array.isArray(each)) return each.map((entry) => without(entry, ''));
    if (typeof each !== 'object' || each === null) return each;
    return Object.fromEntries(Object.entries(each).map(([name, inner]) => [name, without(inner, name)]));
  };
  const made = without(value, '') as Row & { hold?: unknown };
  return 'hold' in made ? { ...made, hold: 'unknown' } : made;
}

describe('tables', () => holds(TABLE_RULES, catalog.rotaries, SPOILED_TABLES, 300));
describe('rotaries', () =>
  holds(
    ROTARY_RULES.filter(({ id }) => !TABLE_RULES.some((each) => each.id === id)),
    catalog.rotaries,
    SPOILED_ROTARIES,
    300,
  ));
describe('machines', () => holds(MACHINE_RULES, catalog.machines, SPOILED_MACHINES, 18));

test.each([
  ['the demo', DEMO_FOLDER],
  ['the example of the contract', join(import.meta.dirname, '../../fixtures')],
])('nothing in %s is hard to believe', (_, folder) => {
  const reading = readCatalogFiles([folder]);
  if (!reading.ok) throw new Error('it cannot be read');
  expect(doubtsIn(reading.value).map(describeProblem)).toEqual([]);
});
