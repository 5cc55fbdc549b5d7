import { describe, expect, test } from 'vitest';
import { CHECK_IDS } from '../../src/rules/checks/ids.ts';
import { CHECKS } from '../../src/rules/checks/index.ts';
import type { Check } from '../../src/rules/judging/check.ts';
import { expectClose } from '../close-to.ts';
import { judgeExample } from './example-shop.ts';

const middle = ({ low, high }: { low: number; high: number }): number => (low + high) / 2;

test('every id has its check, in the order of the tables', () => {
  expect(CHECKS.map(({ id }) => id)).toEqual([...CHECK_IDS]);
});

describe.each(CHECKS.map((check) => [check.id, check] as const))('%s', (_id, check) => {
  test.each(check.examples.map((example) => [example.what, example] as const))('%s', (_what, example) => {
    const outcome = judgeExample(check, example.given);
    expect(outcome.verdict).toBe(example.verdict);
    // the examples are written to six figures or more
    if (example.need !== undefined) expectClose(middle(outcome.need), example.need, { percent: 0.001 });
    if (example.have !== undefined) expectClose(middle(outcome.have), example.have, { percent: 0.001 });
  });

  test('has examples on both sides of its line, and one that stays open', () => {
    const verdicts = new Set(check.examples.map(({ verdict }) => verdict));
    expect([...verdicts]).toEqual(expect.arrayContaining(['open', 'fails']));
    expect(verdicts.has('holds') || verdicts.has('holds if')).toBe(true);
    if (canHoldIf(check)) expect([...verdicts]).toContain('holds if');
  });

  test('an example turns red when its sense is turned round', () => {
    const turned: Check = { ...check, sense: check.sense === 'at-most' ? 'at-least' : 'at-most' };
    const changed = check.examples.filter(
      (example) => judgeExample(turned, example.given).verdict !== example.verdict,
    );
    expect(changed.length).toBeGreaterThan(0);
  });
});

const canHoldIf = (check: Check): boolean =>
  Array.isArray(check.comparisons) && check.comparisons.some((each) => (each.easings ?? []).length > 0);
