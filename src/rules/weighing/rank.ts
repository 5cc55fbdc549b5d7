import type { Interval } from '../../quantities/interval.ts';
import type { Measure } from '../../questions/answers.ts';
import { MORE_IS_BETTER, type Ranked, scoresOn, throughout } from './scores.ts';

/** One step: who stays level with the best on a measure, and who drops. */
interface Step {
  readonly measure: Measure;
  readonly best: Interval;
  readonly stays: readonly Ranked[];
  readonly drops: readonly Ranked[];
}

export interface Ranking {
  /** null: it depends on what is not known */
  readonly winner: string | null;
  /** those who may still win; the winner alone where there is one */
  readonly contenders: readonly string[];
  readonly steps: readonly Step[];
}

/** The least score that is still level with the best. */
const threshold = (best: number, moreIsBetter: boolean, band: number): number => {
  // a best of zero, a negative one or none at all: exact ties only
  const raw = moreIsBetter ? best : -best;
  if (!Number.isFinite(best) || raw <= 0) return best;
  return moreIsBetter ? best * (1 - band) : best * (1 + band);
};

/**
 * Measure by measure, in the user's order: those within the band of the best still in play stay. A step is
 * taken on intervals: who surely drops is out, who perhaps drops is in doubt. The winner is the one that
 * stays surely, whatever the unknowns are, while everyone else drops or loses the tie on the exact measures;
 * otherwise everyone who perhaps stays may still win.
 */
export function rankBy(order: readonly Measure[], band: number, field: readonly Ranked[]): Ranking {
  let inPlay: readonly Ranked[] = field;
  const steps: Step[] = [];
  for (const measure of order) {
    if (inPlay.length < 2) break;
    if (measure === 'margin') inPlay = inPlay.map(unlessBeaten);
    const step = narrow(inPlay, measure, band);
    steps.push(step);
    inPlay = step.stays;
  }
  const winner = bestOfTied(order, inPlay);
  return {
    winner: winner?.id ?? null,
    contenders: winner === null ? inPlay.map(({ id }) => id) : [winner.id],
    steps,
  };
}

/**
 * Margin orders but does not dominate: what beats one on all the rest may drop there. From then on whoever may
 * be beaten puts nobody out.
 */
const unlessBeaten = (each: Ranked): Ranked => ({
  ...each,
  surely: each.surely && each.perhapsBeaten !== true,
});

/** Keeps whoever may be level with the best; `surely` now means: level for every value. */
function narrow(inPlay: readonly Ranked[], measure: Measure, band: number): Step {
  const all = inPlay.map((each) => ({ each, scores: scoresOn(measure, each) }));
  const leastBest = Math.max(
    Number.NEGATIVE_INFINITY,
    ...all.filter(({ each }) => each.surely).map(({ scores }) => scores.whole.low),
  );
  const mostBest = Math.max(...all.map(({ scores }) => scores.whole.high));
  const stays: Ranked[] = [];
  const drops: Ranked[] = [];
  for (const { each, scores } of all) {
    const others = all.filter((other) => other.each !== each);
    const surelyLevel = others.every((other) =>
      throughout(scores, other.scores, (x, y) => level(x.low, y.high, measure, band)),
    );
    // it drops where one that is sure to be in play is always beyond the band
    const perhapsLevel = !others.some(
      (other) =>
        other.each.surely && throughout(scores, other.scores, (x, y) => !level(x.high, y.low, measure, band)),
    );
    if (perhapsLevel) stays.push({ ...each, surely: each.surely && surelyLevel });
    else drops.push(each);
  }
  const best = MORE_IS_BETTER[measure]
    ? { low: leastBest, high: mostBest }
    : { low: -mostBest, high: -leastBest };
  return { measure, best, stays, drops };
}

/** Is a score level with a best that somebody else sets (or sets the best itself)? */
export function level(score: number, best: number, measure: Measure, band: number): boolean {
  if (score >= best) return true;
  const limit = threshold(best, MORE_IS_BETTER[measure], band);
  return score >= limit - 1e-12 * Math.abs(limit);
}

/** Among those still level: the exact measures in the same order, then the id. Null where that is not sure. */
function bestOfTied(order: readonly Measure[], tied: readonly Ranked[]): Ranked | null {
  for (const each of tied) {
    if (!each.surely || each.perhapsBeaten === true) continue;
    if (tied.every((other) => other === each || surelyBefore(order, each, other))) return each;
  }
  return null;
}

function surelyBefore(order: readonly Measure[], a: Ranked, b: Ranked): boolean {
  for (const measure of order) {
    const [mine, its] = [scoresOn(measure, a), scoresOn(measure, b)];
    if (throughout(mine, its, (x, y) => x.low > y.high)) return true;
    const same = throughout(mine, its, (x, y) => x.low === x.high && y.low === y.high && x.low === y.low);
    if (!same) return false;
  }
  return a.id < b.id;
}

/** The first few in order, best first: what drops at a step comes after what stays, by the same procedure. */
export function inOrder(
  order: readonly Measure[],
  band: number,
  field: readonly Ranked[],
  most: number,
): readonly string[] {
  const rest = [...field];
  const ids: string[] = [];
  while (rest.length > 0 && ids.length < most) {
    const { winner, contenders } = rankBy(order, band, rest);
    const next = winner ?? [...contenders].sort()[0] ?? rest[0]?.id;
    ids.push(next as string);
    rest.splice(
      rest.findIndex(({ id }) => id === next),
      1,
    );
  }
  return ids;
}
