import type { Machine } from '../../catalog/catalog.ts';
import type { Answers, Part } from '../../questions/answers.ts';
import type { AssumptionOverrides } from '../../questions/assumptions.ts';
import type { Candidate } from '../../rules/arranging/candidates.ts';
import { groundOf, withPart } from '../../rules/arranging/setting.ts';
import type { ExampleGiven } from '../../rules/checks/example.ts';
import { machineCase } from '../../rules/facts/machine-facts.ts';
import { partCases } from '../../rules/facts/part-facts.ts';
import { builtInCase, onItsBack, rotaryCase } from '../../rules/facts/rotary-facts.ts';
import { shopCase } from '../../rules/facts/shop-facts.ts';
import { acrossKinds } from '../../rules/judging/across-kinds.ts';
import type { Case } from '../../rules/judging/case.ts';
import type { Check } from '../../rules/judging/check.ts';
import { freshMemo } from '../../rules/judging/memo.ts';
import { judge, nothingNeeded, type Outcome } from '../../rules/judging/outcome.ts';
import { known } from '../../rules/judging/value.ts';
import {
  EXAMPLE_ANSWERS,
  EXAMPLE_BUILT_IN,
  EXAMPLE_MACHINE,
  EXAMPLE_PART,
  EXAMPLE_ROTARY,
} from './example-rows.ts';
import { merged } from './merged.ts';

export interface ExampleWorld {
  readonly answers: Answers;
  readonly part: Part;
  readonly cases: readonly Case[];
}

/** The machine with its own table, or with the rotary on it: on its back under a level tool. */
function candidateOf(given: ExampleGiven): Candidate {
  const { builtIn, ...others } = given.machine ?? {};
  const row = merged(EXAMPLE_MACHINE, others);
  if (builtIn !== undefined && builtIn !== null) {
    const own = merged(EXAMPLE_BUILT_IN, builtIn);
    const machine: Machine = { ...row, kind: 'five-axis', table: null, noseToTable: 'unknown', builtIn: own };
    return {
      id: 'example',
      machine: machineCase(machine),
      rotary: builtInCase(machine, own),
      mounting: 'built-in',
    };
  }
  const rotary = rotaryCase(merged(EXAMPLE_ROTARY, given.rotary));
  const upright = rotary.axes === 1 && row.spindle === 'horizontal';
  const usual = rotary.axes === 1 ? (upright ? 'axis-along-y' : 'axis-along-x') : 'tilt-along-x';
  return {
    id: 'example',
    machine: machineCase(row),
    rotary: upright ? onItsBack(rotary) : rotary,
    mounting: given.mounting ?? usual,
  };
}

/** The example shop with the changes of one example. */
export function exampleWorld(given: ExampleGiven, assume: AssumptionOverrides = {}): ExampleWorld {
  const part = merged(EXAMPLE_PART, given.part);
  const answers: Answers = {
    ...EXAMPLE_ANSWERS,
    parts: [part],
    shop: merged(EXAMPLE_ANSWERS.shop, given.shop),
    tools: merged(EXAMPLE_ANSWERS.tools, given.tools),
    work: merged(EXAMPLE_ANSWERS.work, given.work),
    money: merged(EXAMPLE_ANSWERS.money, given.money),
    assume,
  };
  const candidate = candidateOf(given);
  const shop = shopCase(answers);
  const world = { shop, memo: freshMemo() };
  const raised = given.raised ?? 0;
  const heightened = given.heightened ?? 0;
  const setting = {
    additions:
      raised === 0 && heightened === 0
        ? []
        : [{ kind: 'lowered-table', adds: raised, price: 0, height: heightened } as const],
    plates: given.plates ?? 0,
    place: { x: 0, y: 0, turned: false, ...given.place },
  };
  const price = known(120000, 'price');
  const ground = groundOf(world, candidate, setting, price, known(given.swaps ?? 0, 'swaps'));
  const cases = partCases(part, shop).map((each) => withPart(ground, each));
  return { answers, part, cases };
}

/** What a check says of an example, over every kind that it leaves open. */
export function judgeExample(check: Check, given: ExampleGiven, assume: AssumptionOverrides = {}): Outcome {
  const { cases } = exampleWorld(given, assume);
  return acrossKinds(cases, (of) => (check.applies(of) ? judge(check, of) : nothingNeeded(check, of)), true);
}
