import { CHECK_IDS, type CheckId } from '../../rules/checks/ids.ts';
import type { Decision, StageCount } from '../../rules/decision.ts';
import { type Block, type FlowEdge, type FlowNode, heading, list, paragraph } from '../blocks/block.ts';
import { enumerate, type Inline, number, say, words } from '../blocks/inline.ts';
import { arrangementName, machineName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { STAGE_WORDS } from '../wording/stages.ts';
import { OUTCOME_WORDS } from '../wording/verdicts.ts';

/** The way through the decision tree: how many arrangements came to each stage, and what dropped the others. */
export function path(decision: Decision): readonly Block[] {
  return [
    heading(2, say`How it was decided`),
    paragraph(
      say`An arrangement is a machine with a rotary, mounted one way. There are ${number(['count'], '')} of them in this
        catalog. Each went through the stages below, and was dropped at the first after which it could no longer
        pass.`,
    ),
    { kind: 'flowchart', nodes: nodes(decision), edges: edges(decision) },
    list(decision.stages.map((stage, index) => stageLine(stage, index))),
    ...ofLargeCatalog(decision),
    ...leftOut(decision),
  ];
}

/** Not all of a large catalog is judged one by one, and ranges are not worked out on it: better said than found out. */
function ofLargeCatalog({ market }: Decision): readonly Block[] {
  if (market === null) return [];
  const at = (name: keyof typeof market) => number(['market', name], '');
  const unseen =
    market.unseen === 0
      ? []
      : say` Another ${at('unseen')} were too many to be judged in this order of what matters: one of them may be better.`;
  return [
    paragraph([
      ...say`This catalog is large. What fails whatever is added and wherever it stands was dropped by the numbers of machine and
        rotary alone. Of the others ${at('looked')} were judged one by one, and ${at('behind')} not: at their very best they are
        behind one that was. So among those that are left some may fail after all.`,
      ...unseen,
      ...say` How far each answer may move was not worked out.`,
    ]),
  ];
}

/** What was not looked at on a horizontal mill: better said than guessed. */
function leftOut(decision: Decision): readonly Block[] {
  const names = decision.inputs.catalog.machines.flatMap((row, index) =>
    row.spindle === 'horizontal' && row.kind !== 'five-axis'
      ? [machineName(decision, row.id, ['inputs', 'catalog', 'machines', index, 'id'])]
      : [],
  );
  if (names.length === 0) return [];
  return [
    paragraph(
      say`The spindle of ${enumerate(names)} is horizontal: rotaries of one axis were looked at there, standing upright;
        tilting ones were not.`,
    ),
  ];
}

function stageLine(stage: StageCount, index: number): readonly Inline[] {
  const { title, asks } = STAGE_WORDS[stage.stage];
  const before = number(['stages', index, 'before'], '');
  const after = number(['stages', index, 'after'], '');
  const dropped = droppedBy(stage, index);
  const charged = dropped.length === 0 ? say`Nothing was dropped.` : say`Dropped by ${enumerate(dropped)}.`;
  return say`${words(title)}: ${words(asks)} ${before} came in, ${after} are left. ${charged}`;
}

/** 'swing 41', one for each check that dropped something, in the order of the checks. */
function droppedBy(stage: StageCount, index: number): readonly (readonly Inline[])[] {
  return droppingChecks(stage).map((id) => {
    const count = number(['stages', index, 'dropped', id], '');
    return say`${words(CHECK_WORDS[id].name)} ${count}`;
  });
}

const droppingChecks = (stage: StageCount): readonly CheckId[] =>
  CHECK_IDS.filter((id) => Object.hasOwn(stage.dropped, id) && (stage.dropped[id] ?? 0) > 0);

/** 'rotary-class' as a name that Mermaid takes: letters only. */
const nodeId = (stage: string): string => `stage_${stage.replaceAll('-', '_')}`;

function nodes(decision: Decision): readonly FlowNode[] {
  const all: FlowNode = {
    id: 'all',
    shape: 'step',
    lines: [say`${number(['count'], '')} arrangements`],
  };
  const stages = decision.stages.flatMap((stage, index): readonly FlowNode[] => {
    const after = number(['stages', index, 'after'], '');
    const before = number(['stages', index, 'before'], '');
    const step: FlowNode = {
      id: nodeId(stage.stage),
      shape: 'step',
      lines: [[words(STAGE_WORDS[stage.stage].title)], say`${after} of ${before} left`],
    };
    const dropped = droppedBy(stage, index);
    if (dropped.length === 0) return [step];
    return [
      step,
      {
        id: `${nodeId(stage.stage)}_dropped`,
        shape: 'aside',
        lines: [say`dropped by`, ...dropped],
      },
    ];
  });
  return [all, ...stages, { id: 'result', shape: 'end', lines: resultLines(decision) }];
}

function resultLines(decision: Decision): readonly (readonly Inline[])[] {
  if (decision.recommended === null) return [[words(OUTCOME_WORDS[decision.outcome])]];
  return [say`recommended`, arrangementName(decision, decision.recommended, ['recommended'])];
}

function edges(decision: Decision): readonly FlowEdge[] {
  const main = ['all', ...decision.stages.map(({ stage }) => nodeId(stage)), 'result'];
  const taken = decision.recommended !== null;
  const along = main.slice(1).map((to, index): FlowEdge => {
    const last = to === 'result';
    const label = taken ? (last ? say`ranked first` : say`taken`) : [];
    return { from: main[index] ?? 'all', to, taken, label };
  });
  const aside = decision.stages.flatMap((stage): readonly FlowEdge[] =>
    droppingChecks(stage).length === 0
      ? []
      : [
          {
            from: nodeId(stage.stage),
            to: `${nodeId(stage.stage)}_dropped`,
            taken: false,
            label: [],
          },
        ],
  );
  return [...along, ...aside];
}
