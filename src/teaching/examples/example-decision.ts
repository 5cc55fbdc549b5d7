import type { ExampleGiven } from '../../rules/checks/example.ts';
import type { ClassExampleGiven } from '../../rules/classes/rule.ts';
import { decide } from '../../rules/decide.ts';
import type { Decision } from '../../rules/decision.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_BUILT_IN,
  EXAMPLE_CATALOG,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from './example-rows.ts';
import { merged } from './merged.ts';

/** The decision of the example shop with the changes of one example of a check: every arrangement, with its numbers. */
export function decisionOfCheck(given: ExampleGiven): Decision {
  const { builtIn, ...others } = given.machine ?? {};
  const row = merged(EXAMPLE_MACHINE, others);
  const own = builtIn == null ? null : merged(EXAMPLE_BUILT_IN, builtIn);
  const answers = {
    ...EXAMPLE_ANSWERS,
    parts: [merged(EXAMPLE_PART, given.part)],
    tools: merged(EXAMPLE_ANSWERS.tools, given.tools),
    shop: merged(EXAMPLE_ANSWERS.shop, given.shop),
    work: merged(EXAMPLE_ANSWERS.work, given.work),
    money: merged(EXAMPLE_ANSWERS.money, given.money),
  };
  const machine =
    own === null
      ? row
      : ({ ...row, kind: 'five-axis', table: null, noseToTable: 'unknown', builtIn: own } as const);
  const catalog = {
    ...EXAMPLE_CATALOG,
    rotaries: own === null ? [merged(EXAMPLE_ROTARY, given.rotary)] : [],
    machines: [machine],
  };
  return decide(answers, catalog, { all: true });
}

/** The decision of the example shop with the changes of one example of a rule. */
export function decisionOfRule(given: ClassExampleGiven): Decision {
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
