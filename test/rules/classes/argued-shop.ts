import type { ClassExampleGiven } from '../../../src/rules/classes/rule.ts';
import { decide } from '../../../src/rules/decide.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
  merged,
} from '../example-shop.ts';

/** The decision of the example shop with the changes of one example. */
export function decisionOf(given: ClassExampleGiven): Decision {
  const put = <Row>(rows: readonly unknown[] | undefined, base: Row): readonly Row[] =>
    rows === undefined ? [base] : rows.map((change) => merged(base, change));
  const answers = {
    ...EXAMPLE_ANSWERS,
    parts: put(given.parts, EXAMPLE_PART),
    shop: merged(EXAMPLE_ANSWERS.shop, given.shop),
    work: merged(EXAMPLE_ANSWERS.work, given.work),
    money: merged(EXAMPLE_ANSWERS.money, given.money),
    assume: given.assume ?? {},
  };
  const catalog = {
    ...EXAMPLE_CATALOG,
    rotaries: put(given.rotaries, EXAMPLE_ROTARY),
    machines: put(given.machines, EXAMPLE_MACHINE),
  };
  return decide(answers, catalog, { traces: false });
}
