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
import { exampleAnswers, exampleMachine } from './example-given.ts';
import { EXAMPLE_ROTARY } from './example-rows.ts';
import { merged } from './merged.ts';

export interface ExampleWorld {
  readonly answers: Answers;
  readonly part: Part;
  readonly cases: readonly Case[];
}

/** The machine with its own table, or with the rotary on it: on its back under a level tool. */
function candidateOf(given: ExampleGiven): Candidate {
  const row = exampleMachine(given.machine);
  const machine = machineCase(row);
  if (row.builtIn !== null)
    return { id: 'example', machine, rotary: builtInCase(row, row.builtIn), mounting: 'built-in' };
  const rotary = rotaryCase(merged(EXAMPLE_ROTARY, given.rotary));
  const upright = rotary.axes === 1 && row.spindle === 'horizontal';
  const usual = rotary.axes === 1 ? (upright ? 'axis-along-y' : 'axis-along-x') : 'tilt-along-x';
  return {
    id: 'example',
    machine,
    rotary: upright ? onItsBack(rotary) : rotary,
    mounting: given.mounting ?? usual,
  };
}

/** The example shop with the changes of one example. */
export function exampleWorld(given: ExampleGiven, assume: AssumptionOverrides = {}): ExampleWorld {
  const answers = exampleAnswers(given, assume);
  const [part] = answers.parts;
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
