import type { Measure } from '../../questions/answers.ts';
import type { AnswerBeside } from '../../rules/beside.ts';
import { type Block, type Cell, paragraph, table } from '../blocks/block.ts';
import { data, type Inline, number, say, words } from '../blocks/inline.ts';
import { arrangementAt } from '../checks-at.ts';
import { arrangementName } from '../names.ts';
import type { SideBySide } from '../side-by-side.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';

/** What decisions are held against each other on: money first, then what is given up for it. */
const SHOWN: readonly (Measure | 'netPresentValue')[] = [
  'price',
  'payback',
  'netPresentValue',
  'coverage',
  'floorArea',
  'margin',
];

/** Decisions in columns: what is answered differently, what is recommended, and what that measures. */
export function sideBySide(whole: SideBySide): readonly Block[] {
  const { columns, answersBeside } = whole;
  const answers = answersBeside.map((answer, row): readonly Cell[] => [
    answerTitle(answer, row),
    ...answer.words.map((_, index) => [data(['answersBeside', row, 'words', index])]),
  ]);
  const measures = SHOWN.map((measure): readonly Cell[] => [
    [words(measureTitle(measure))],
    ...columns.map((_, index) => [measured(whole, index, measure)]),
  ]);
  return [
    table(
      [[[], 'left'], ...columns.map((_, index) => [[data(['columns', index, 'name'])], 'left'] as const)],
      [...answers, [say`Recommended`, ...columns.map((_, index) => answerOf(whole, index))], ...measures],
    ),
    ...(answers.length === 0 ? [paragraph(say`Every question is answered the same in all of them.`)] : []),
  ];
}

/** Of the answer in this row, with the part that it is about. */
export function answerTitle({ part }: AnswerBeside, row: number): readonly Inline[] {
  const at = (key: 'part' | 'title') => data(['answersBeside', row, key]);
  return part === null ? [at('title')] : say`${at('part')}: ${at('title')}`;
}

export const measureTitle = (measure: (typeof SHOWN)[number]): string =>
  measure === 'netPresentValue' ? 'Net present value' : MEASURE_WORDS[measure].title;

/** The arrangement by its name, or why there is none. */
function answerOf(whole: SideBySide, index: number): readonly Inline[] {
  const decision = whole.columns[index]?.decision;
  const path = ['columns', index, 'decision', 'recommended'];
  if (decision?.recommended != null) return arrangementName(whole, decision.recommended, path);
  return decision?.outcome === 'open' ? say`open` : say`none passes`;
}

/** A number of what is recommended in a column; a dash where nothing is. */
export function measured(whole: SideBySide, index: number, measure: (typeof SHOWN)[number]): Inline {
  const decision = whole.columns[index]?.decision;
  const at = decision === undefined ? undefined : arrangementAt(decision, decision.recommended);
  if (at === undefined) return words('–');
  const path = ['columns', index, 'decision', ...at.path, 'measures', measure];
  if (measure === 'netPresentValue') return number(path, 'money', { ifNull: 'not worked out' });
  const { unit, ifNull = 'not worked out' } = MEASURE_WORDS[measure];
  return number(path, unit, { ifNull });
}
