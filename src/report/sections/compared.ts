import { MEASURES } from '../../questions/answers.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Block, details, figureBlock, paragraph, table } from '../blocks/block.ts';
import { number, say, words } from '../blocks/inline.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';
import { tradeOffChart } from '../figures/trade-off-chart.ts';
import { arrangementName } from '../names.ts';
import { MEASURE_WORDS } from '../wording/measures.ts';

/** More rows than this are no comparison; the decision file has them all. */
const MOST_ROWS = 40;

/** The recommendation and its runners-up side by side, and behind them whatever else nothing beats. */
export function compared(decision: Decision): readonly Block[] {
  if (decision.recommended === null) return [];
  const first = [decision.recommended, ...decision.runnersUp.map(({ id }) => id)];
  const best = first.flatMap((id) => arrangementAt(decision, id) ?? []);
  const others = decision.arrangements.flatMap((arrangement, index): readonly ArrangementAt[] => {
    const counts = arrangement.undominated && arrangement.passes === 'yes' && !first.includes(arrangement.id);
    return counts ? [{ arrangement, path: ['arrangements', index] }] : [];
  });
  return [
    ...(best.length < 2 ? [] : [sideBySide(decision, best)]),
    ...figureBlock(tradeOffChart(decision)),
    ...(others.length === 0 ? [] : [unbeaten(decision, others)]),
  ];
}

function unbeaten(decision: Decision, others: readonly ArrangementAt[]): Block {
  return details(say`Others that pass, and that nothing beats on every measure`, [
    sideBySide(decision, others.slice(0, MOST_ROWS)),
    ...(others.length > MOST_ROWS ? [paragraph(say`There are more of them in the decision file.`)] : []),
  ]);
}

function sideBySide(decision: Decision, all: readonly ArrangementAt[]): Block {
  // a measure that is known of none of them says nothing
  const shown = MEASURES.filter((measure) =>
    all.some(({ arrangement }) => arrangement.measures[measure] !== null),
  );
  return table(
    [
      [say`Arrangement`, 'left'],
      ...shown.map((measure) => [[words(MEASURE_WORDS[measure].title)], 'right'] as const),
    ],
    all.map(({ arrangement, path }) => [
      arrangementName(decision, arrangement.id, [...path, 'id']),
      ...shown.map((measure) => [
        number([...path, 'measures', measure], MEASURE_WORDS[measure].unit, {
          ifNull: MEASURE_WORDS[measure].ifNull ?? 'not worked out',
        }),
      ]),
    ]),
  );
}
