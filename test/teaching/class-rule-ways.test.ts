import { describe, expect, test } from 'vitest';
import { CLASS_RULES } from '../../src/rules/classes/index.ts';
import { decide } from '../../src/rules/decide.ts';
import { standingOf } from '../../src/rules/standing.ts';
import { shopOfRule } from '../../src/teaching/examples/example-decision.ts';
import { ruleGround } from '../../src/teaching/rules/rule-ground.ts';
import { workedRule } from '../../src/teaching/rules/worked-rule.ts';
import { expectClose } from '../close-to.ts';

const examples = CLASS_RULES.flatMap((rule) =>
  rule.examples
    .filter(({ speaks }) => speaks !== 'open')
    .map((example) => [`${rule.id}: ${example.what}`, rule, example] as const),
);

describe('the printed way comes to the number and the line of the rule', () => {
  test.each(examples)('%s', (_name, rule, { given, of, speaks }) => {
    const { answers, catalog } = shopOfRule(given);
    const ground = ruleGround(
      of,
      answers,
      standingOf(answers, catalog),
      decide(answers, catalog, { all: true }),
    );
    const number = rule.number(ground)?.value;
    const worked = workedRule(rule, ground);
    if (number === undefined) {
      expect(worked).toBeNull();
      return;
    }
    if (worked === null) throw new Error('there is no way');
    expectClose(worked.worked.need, number.low, { absolute: 1e-9 });
    expectClose(worked.worked.have, rule.limit(ground).low, { absolute: 1e-9 });
    void speaks;
  });
});
