import type { Machine } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { AssumptionOverrides } from '../../questions/assumptions.ts';
import type { ExampleGiven } from '../../rules/checks/example.ts';
import { EXAMPLE_ANSWERS, EXAMPLE_BUILT_IN, EXAMPLE_MACHINE, EXAMPLE_PART } from './example-rows.ts';
import { merged } from './merged.ts';

/** The answers of the example shop with the changes of one example. */
export const exampleAnswers = (given: ExampleGiven, assume: AssumptionOverrides = {}) =>
  ({
    ...EXAMPLE_ANSWERS,
    parts: [merged(EXAMPLE_PART, given.part)],
    shop: merged(EXAMPLE_ANSWERS.shop, given.shop),
    tools: merged(EXAMPLE_ANSWERS.tools, given.tools),
    work: merged(EXAMPLE_ANSWERS.work, given.work),
    money: merged(EXAMPLE_ANSWERS.money, given.money),
    assume,
  }) as const satisfies Answers;

/** The machine of an example: the mill, or a five-axis machine where the example gives a table of its own. */
export function exampleMachine(given: ExampleGiven['machine'] = {}): Machine {
  const { builtIn, ...others } = given;
  const row = merged(EXAMPLE_MACHINE, others);
  if (builtIn === undefined || builtIn === null) return row;
  const own = merged(EXAMPLE_BUILT_IN, builtIn);
  return { ...row, kind: 'five-axis', table: null, noseToTable: 'unknown', builtIn: own };
}
