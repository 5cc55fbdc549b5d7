import type { Answers, Uncertain } from '../../src/questions/answers.ts';
import type { Asking } from '../../src/rules/asking/asking.ts';
import type { Ask } from '../../src/session/world.ts';

/**
 * Stands in for the engine where the conversation is tested: while nobody knows the budget, that comes first, then the
 * tolerance of each part; a budget of more than 400 000 decides by itself.
 */
export const fakeAsk: Ask = (answers) => {
  const { budget } = answers.money;
  if (typeof budget === 'number' && budget > 400_000) return asking('recommended', []);
  return asking('open', [...named('money.budget', budget), ...tolerances(answers)]);
};

const named = (path: string, value: Uncertain): readonly string[] => (value === 'unknown' ? [path] : []);

const tolerances = ({ parts }: Answers): readonly string[] =>
  parts.flatMap(({ name, tolerance }) => named(`parts[${name}].tolerance`, tolerance));

const asking = (outcome: Asking['outcome'], answers: readonly string[]): Asking => ({
  outcome,
  left: outcome === 'open' ? 31 : 1,
  outOf: null,
  openChecks: [],
  answers: answers.map((answer, index) => ({
    answer,
    touches: 14 - index,
    drops: 7 - index,
    ordersOnly: false,
  })),
});
