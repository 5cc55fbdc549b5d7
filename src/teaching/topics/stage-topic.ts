import { heading, list, paragraph } from '../../report/blocks/block.ts';
import { codeData, enumerate, number, say, strong, words } from '../../report/blocks/inline.ts';
import { CHECK_WORDS } from '../../report/wording/checks.ts';
import { STAGE_WORDS } from '../../report/wording/stages.ts';
import { CHECKS } from '../../rules/checks/index.ts';
import type { Decision } from '../../rules/decision.ts';
import { STAGES, type StageId } from '../../rules/stages/index.ts';
import { decisionOfCheck } from '../examples/example-decision.ts';
import { at, type Explained, rootOf } from '../explained.ts';
import { STAGE_LESSONS } from '../words/stages.ts';
import type { Topic } from './topic.ts';

/** Every stage of the decision, in order. */
export const stageTopics = (): readonly Topic[] =>
  STAGES.map((id) => ({ kind: 'stage', id, title: STAGE_WORDS[id].title, explain: () => explainStage(id) }));

/** A decision in which the stage drops something: of the failing examples of its checks the first that does. */
export function droppingAt(id: StageId): Decision {
  const examples = CHECKS.filter(({ stage }) => stage === id).flatMap((check) =>
    check.examples.filter(({ verdict }) => verdict === 'fails'),
  );
  for (const { given } of examples) {
    // without additions, which would be taken where they help
    const decision = decisionOfCheck({ ...given, machine: { ...given.machine, clearance: [] } });
    if (decision.stages.some(({ stage, dropped }) => stage === id && Object.keys(dropped).length > 0))
      return decision;
  }
  throw new Error(`no example drops at ${id}`);
}

function explainStage(id: StageId): Explained {
  const decision = droppingAt(id);
  const index = decision.stages.findIndex(({ stage }) => stage === id);
  const dropped = Object.keys(decision.stages[index]?.dropped ?? {});
  const { title, asks } = STAGE_WORDS[id];
  const { plain, mistake } = STAGE_LESSONS[id];
  const root = rootOf(decision, { id, rule: 'C = H_c/H', line: 'C < leastCoverage' });
  const path = ['stages', index];
  return {
    root,
    blocks: [
      heading(1, [words(title)]),
      paragraph(say`${codeData(at('id'))}, a stage of the decision. ${words(asks)}`),
      paragraph([words(plain)]),
      paragraph(say`Its checks:`),
      list(
        CHECKS.filter(({ stage }) => stage === id).map((check) => say`${words(CHECK_WORDS[check.id].title)}`),
      ),
      heading(2, say`The rule`),
      paragraph(
        say`${codeData(at('rule'))}, and an arrangement drops here where ${codeData(at('line'))}. H are the yearly five-axis hours
          of all families, ${words('H_c')} those of the families that nothing fails up to this stage. It drops too where a check of
          its own fails, or one of a must-have part.`,
      ),
      heading(2, say`An example, worked out`),
      paragraph(
        say`Arrangements that come to this stage: ${number([...path, 'before'], '')}; after it: ${number([...path, 'after'], '')}.
          Dropped by ${enumerate(dropped.map((check) => strong([words(CHECK_WORDS[check as keyof typeof CHECK_WORDS].name)])))}. Least
          coverage: ${number(['inputs', 'assume', 'leastCoverage'], 'share')}.`,
      ),
      heading(2, say`Sketch`),
      paragraph(say`None. It is a step of the way; the report draws the whole way.`),
      heading(2, say`The usual mistake`),
      paragraph([words(mistake)]),
      heading(2, say`Where it comes from`),
      paragraph(say`The order is common practice, no source; least coverage is an assumption.`),
    ],
  };
}
