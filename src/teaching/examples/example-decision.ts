import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { ExampleGiven } from '../../rules/checks/example.ts';
import type { ClassExampleGiven } from '../../rules/classes/rule.ts';
import { decide } from '../../rules/decide.ts';
import type { Decision } from '../../rules/decision.ts';
import { exampleAnswers, exampleMachine } from './example-given.ts';
import { EXAMPLE_CATALOG, EXAMPLE_MACHINE, EXAMPLE_PART, EXAMPLE_ROTARY } from './example-rows.ts';
import { merged } from './merged.ts';

/** The decision of the example shop with the changes of one example of a check: every arrangement, with its numbers. */
export function decisionOfCheck(given: ExampleGiven): Decision {
  const machine = exampleMachine(given.machine);
  const catalog = {
    ...EXAMPLE_CATALOG,
    rotaries: machine.builtIn === null ? [merged(EXAMPLE_ROTARY, given.rotary)] : [],
    machines: [machine],
  };
  return decide(exampleAnswers(given), catalog, { all: true });
}

/** Answers and catalog of the example shop with the changes of one example of a rule. */
export function shopOfRule(given: ClassExampleGiven): {
  readonly answers: Answers;
  readonly catalog: Catalog;
} {
  const put = <Row>(rows: readonly unknown[] | undefined, base: Row): readonly Row[] =>
    rows === undefined ? [base] : rows.map((change) => merged(base, change));
  const answers = {
    ...exampleAnswers(given, given.assume),
    parts: put(given.parts, EXAMPLE_PART),
  };
  const catalog = {
    ...EXAMPLE_CATALOG,
    rotaries: put(given.rotaries, EXAMPLE_ROTARY),
    machines: put(given.machines, EXAMPLE_MACHINE),
  };
  return { answers, catalog };
}

/** The decision of the example shop with the changes of one example of a rule. */
export function decisionOfRule(given: ClassExampleGiven): Decision {
  const { answers, catalog } = shopOfRule(given);
  return decide(answers, catalog, { traces: false });
}
