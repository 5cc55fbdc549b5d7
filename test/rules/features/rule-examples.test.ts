import { describe, expect, test } from 'vitest';
import { FEATURE_IDS } from '../../../src/rules/features/ids.ts';
import { FEATURE_RULES } from '../../../src/rules/features/index.ts';
import type { FeatureExample } from '../../../src/rules/features/rule.ts';
import { expectClose } from '../../close-to.ts';
import { decisionOf } from '../classes/argued-shop.ts';

test('every id has its rule, in the order in which they are listed', () => {
  expect(FEATURE_RULES.map(({ id }) => id)).toEqual([...FEATURE_IDS]);
});

const found = (id: string, { given }: FeatureExample) => {
  const { arrangements } = decisionOf(given);
  const best = arrangements.find(({ passes }) => passes === 'yes') ?? arrangements[0];
  return best?.features.find(({ feature }) => feature === id);
};

/** A tool setter and a chip conveyor save time; nothing fails without them. */
const ONLY_HELPS: ReadonlySet<string> = new Set(['toolSetter', 'chipConveying']);

describe.each(FEATURE_RULES.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  test.each(rule.examples.map((each) => [each.what, each] as const))('%s', (_what, example) => {
    const need = found(id, example);
    expect(need?.need).toBe(example.need);
    if (example.number !== undefined) expectClose(Number(need?.number), example.number, { percent: 0.01 });
  });

  test('has examples on both sides of its line', () => {
    expect(new Set(rule.examples.map(({ need }) => need)).size).toBeGreaterThan(1);
  });

  test.runIf(!ONLY_HELPS.has(id))('is required in one example and not in another', () => {
    const required = rule.examples.map(({ need }) => need === 'required');
    expect(new Set(required)).toEqual(new Set([true, false]));
  });
});
