import type { Measure } from '../../questions/answers.ts';
import { level, rankBy } from '../weighing/rank.ts';
import { type Ranked, scoresOn } from '../weighing/scores.ts';
import type { Hopes } from './hopes.ts';

/** The best score, step by step, that one has which surely is in play there; −∞: none. */
export interface Bar {
  readonly measure: Measure;
  readonly least: number;
}

/** The bars that those set which nobody beats: at each step by whoever is surely still in play. */
export function barsOf(order: readonly Measure[], band: number, field: readonly Ranked[]): readonly Bar[] {
  const { steps } = rankBy(order, band, field);
  let inPlay: readonly Ranked[] = field;
  return order.map((measure, index) => {
    const sure = inPlay.filter(({ surely, perhapsBeaten }) => surely && perhapsBeaten !== true);
    const least = Math.max(
      Number.NEGATIVE_INFINITY,
      ...sure.map((each) => scoresOn(measure, each).whole.low),
    );
    inPlay = steps[index]?.stays ?? inPlay;
    return { measure, least };
  });
}

/**
 * Does an arrangement drop at some step, at its very best, without having moved any bar before it? Then it neither wins nor
 * changes who does. Margin orders but does not dominate: from there on nothing is behind.
 */
export function isBehind(hopes: Hopes, bars: readonly Bar[], band: number): boolean {
  for (const { measure, least } of bars) {
    if (measure === 'margin') return false;
    const best = hopes[measure];
    if (!level(best, least, measure, band)) return true;
    if (best > least) return false;
  }
  return false;
}
