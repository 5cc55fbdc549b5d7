import type { CheckId } from '../../rules/checks/ids.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, figureBlock, heading, paragraph, table } from '../blocks/block.ts';
import { type Inline, number, say, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { type ArrangementAt, arrangementAt, checksAt, ofCoveredParts, worstFirst } from '../checks-at.ts';
import { tablePlan } from '../figures/table-plan.ts';
import { arrangementName } from '../names.ts';
import { MOUNTING_WORDS } from '../wording/arrangement.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';
import { sentenceCase } from '../wording/sentence-case.ts';
import { STAGE_WORDS } from '../wording/stages.ts';

/** What turning the rotary on the table changes: what it takes of table, travel and height. */
const CHANGED: readonly CheckId[] = [
  'table-footprint',
  'slot-match',
  'travel-x',
  'travel-y',
  'reach-high',
  'index-clear',
  'column',
];

/**
 * Both ways in which the rotary can be mounted on that machine, held against each other: the envelope that each
 * reaches against the table that it takes.
 */
export function bothWays(decision: Decision): readonly Block[] {
  const taken = arrangementAt(decision, decision.recommended);
  if (taken === undefined || taken.arrangement.rotary === null) return [];
  const title = heading(2, say`Which way round on the table`);
  const other = arrangementAt(decision, decision.otherWay);
  if (other === undefined) {
    return [
      title,
      paragraph(say`Its base can be held on that table in one way only, so there is nothing to choose.`),
      ...figureBlock(tablePlan(decision, taken)),
    ];
  }
  return [
    title,
    paragraph(
      say`The same rotary on the same machine, mounted both ways: what each holds, against what it takes of table and
        travel. The first was taken. ${fate(decision, other)}`,
    ),
    table(
      [
        [say`What`, 'left'],
        [name(taken), 'right'],
        [name(other), 'right'],
      ],
      [...measures(taken, other), ...space(taken, other), ...checks(taken, other)],
    ),
    ...figureBlock(tablePlan(decision, taken)),
  ];
}

const name = ({ arrangement: { mounting } }: ArrangementAt): Cell => [
  words(sentenceCase(MOUNTING_WORDS[mounting])),
];

/** What became of the other way. */
function fate(decision: Decision, { arrangement, path }: ArrangementAt): readonly Inline[] {
  const other = arrangementName(decision, arrangement.id, [...path, 'id']);
  const { dropped, passes } = arrangement;
  if (dropped !== null) {
    return say`${other} was dropped at ${words(STAGE_WORDS[dropped.stage].title.toLowerCase())}, by
      ${words(CHECK_WORDS[dropped.check].name)}.`;
  }
  return passes === 'yes'
    ? say`${other} passes too; how the two were ranked stands under “How the rest were ranked”.`
    : say`${other} is still open.`;
}

type Row = readonly Cell[];

const measures = (a: ArrangementAt, b: ArrangementAt): readonly Row[] =>
  (['coverage', 'viseStations', 'swapHours', 'margin'] as const).map((measure) => {
    const { title, unit, ifNull = 'not worked out' } = MEASURE_WORDS[measure];
    const cell = ({ path }: ArrangementAt): Cell => [
      number([...path, 'measures', measure], unit, { ifNull }),
    ];
    return [[words(title)], cell(a), cell(b)];
  });

function space(a: ArrangementAt, b: ArrangementAt): readonly Row[] {
  const cell = ({ arrangement, path }: ArrangementAt, key: 'left' | 'right'): Cell =>
    arrangement.space === null ? [] : [number([...path, 'space', key], 'mm')];
  return [
    [say`Table free on the left`, cell(a, 'left'), cell(b, 'left')],
    [say`Table free on the right`, cell(a, 'right'), cell(b, 'right')],
  ];
}

/** Each check once, at the part at which it is worst: needed of what there is, and how it stands. */
function checks(a: ArrangementAt, b: ArrangementAt): readonly Row[] {
  return CHANGED.flatMap((check): readonly Row[] => {
    const cells = [cellOf(a, check), cellOf(b, check)] as const;
    if (cells.every(({ length }) => length === 0)) return [];
    return [[[words(sentenceCase(CHECK_WORDS[check].name))], ...cells]];
  });
}

function cellOf(at: ArrangementAt, check: CheckId): Cell {
  const held = worstFirst(ofCoveredParts(at)).find(({ result }) => result.check === check);
  const found = held ?? worstFirst(checksAt(at)).find(({ result }) => result.check === check);
  if (found === undefined) return [];
  const { need, have } = checkNumbers(found);
  return say`${need} of ${have} ${verdictSign(found.result.verdict)}`;
}
