import type { CheckExample, ExampleGiven } from '../../../src/rules/checks/example.ts';
import type { CheckId } from '../../../src/rules/checks/ids.ts';
import { CHECKS } from '../../../src/rules/checks/index.ts';
import type { Check } from '../../../src/rules/judging/check.ts';
import type { Outcome } from '../../../src/rules/judging/outcome.ts';
import { evaluateSide } from '../../../src/rules/judging/side.ts';
import { judgeExample } from '../example-shop.ts';

export function checkOf(id: CheckId): Check {
  const check = CHECKS.find((each) => each.id === id);
  if (check === undefined) throw new Error(`no check ${id}`);
  return check;
}

/** What a check says of the example shop with these changes. */
export const outcomeOf = (id: CheckId, given: ExampleGiven): Outcome => judgeExample(checkOf(id), given);

/** The verdict, and what was compared; null: the check has nothing to say. */
export function said(
  id: CheckId,
  given: ExampleGiven,
): readonly [CheckExample['verdict'], what: string | null] {
  const { verdict, comparison } = outcomeOf(id, given);
  return [verdict, comparison?.what ?? null];
}

/** The verdict with need and have, each rounded to a thousandth; an interval as both its ends. */
export function numbers(
  id: CheckId,
  given: ExampleGiven,
): readonly [CheckExample['verdict'], unknown, unknown] {
  const { verdict, need, have } = outcomeOf(id, given);
  return [verdict, ends(need), ends(have)];
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000 + 0;
const ends = ({ low, high }: { low: number; high: number }): unknown =>
  low === high ? rounded(low) : [rounded(low), rounded(high)];

/** The measure that makes it hold, and how much of it; null: it takes no amount. */
export function easing(id: CheckId, given: ExampleGiven): readonly [measure: string | null, amount: unknown] {
  const { easing: measure, easingRule, of } = outcomeOf(id, given);
  return [measure, easingRule?.amount === undefined ? null : ends(evaluateSide(easingRule.amount, of))];
}
