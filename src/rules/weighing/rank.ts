import type { Interval } from '../../quantities/interval.ts';
import type { Measure } from '../../questions/answers.ts';
import type { MeasureValues } from './judged.ts';

/** What can be ranked: an id and its measures. `surely`: it is in the running for every value of the unknowns. */
export interface Ranked {
  readonly id: string;
  readonly surely: boolean;
  readonly measures: MeasureValues;
}

/** More is better for these, less for the others. */
const MORE_IS_BETTER: Readonly<Record<Measure, boolean>> = {
  coverage: true,
  viseStations: true,
  payback: false,
  price: false,
  floorArea: false,
  swapHours: false,
  margin: true,
};

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

const NULL: Interval = { low: Number.NEGATIVE_INFINITY, high: Number.NEGATIVE_INFINITY };

/** A measure turned so that more is better; null ranks last. */
export function scoreOn(measure: Measure, value: Interval | null): Interval {
  if (value === null) return NULL;
  return MORE_IS_BETTER[measure] ? value : { low: -value.high, high: -value.low };
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

/** Keeps whoever may be level with the best; `surely` now means: level for every value. */
function narrow(inPlay: readonly Ranked[], measure: Measure, band: number): Step {
  const scores = inPlay.map((each) => ({ each, score: scoreOn(measure, each.measures[measure]) }));
  const sure = scores.filter(({ each }) => each.surely);
  const leastBest = Math.max(Number.NEGATIVE_INFINITY, ...sure.map(({ score }) => score.low));
  const mostBest = Math.max(...scores.map(({ score }) => score.high));
  const stays: Ranked[] = [];
  const drops: Ranked[] = [];
  for (const { each, score } of scores) {
    const bestOfOthers = Math.max(
      Number.NEGATIVE_INFINITY,
      ...scores.filter((other) => other.each !== each).map((other) => other.score.high),
    );
    const surelyLevel = level(score.low, bestOfOthers, measure, band);
    const perhapsLevel = level(score.high, leastBest, measure, band);
    if (perhapsLevel) stays.push({ ...each, surely: each.surely && surelyLevel });
    else drops.push(each);
  }
  const [low, high] = [Math.max(leastBest, Number.NEGATIVE_INFINITY), mostBest];
  const best = MORE_IS_BETTER[measure] ? { low, high } : { low: -high, high: -low };
  return { measure, best, stays, drops };
}

/** Is a score level with a best that somebody else sets (or sets the best itself)? */
function level(score: number, best: number, measure: Measure, band: number): boolean {
  if (score >= best) return true;
  const limit = threshold(best, MORE_IS_BETTER[measure], band);
  return score >= limit - 1e-12 * Math.abs(limit);
}

/** Among those still level: the exact measures in the same order, then the id. Null where that is not sure. */
function bestOfTied(order: readonly Measure[], tied: readonly Ranked[]): Ranked | null {
  for (const each of tied) {
    if (!each.surely) continue;
    if (tied.every((other) => other === each || surelyBefore(order, each, other))) return each;
  }
  return null;
}

function surelyBefore(order: readonly Measure[], a: Ranked, b: Ranked): boolean {
  for (const measure of order) {
    const [x, y] = [scoreOn(measure, a.measures[measure]), scoreOn(measure, b.measures[measure])];
    if (x.low > y.high) return true;
    const same = x.low === x.high && y.low === y.high && x.low === y.low;
    if (!same) return false;
  }
  return a.id < b.id;
}

/** Does a beat b on every measure, at least as good everywhere and better somewhere, for every value? */
export function dominates(measures: readonly Measure[], a: Ranked, b: Ranked): boolean {
  let better = false;
  for (const measure of measures) {
    const [x, y] = [scoreOn(measure, a.measures[measure]), scoreOn(measure, b.measures[measure])];
    if (x.low < y.high) return false;
    if (x.low > y.high) better = true;
  }
  return better;
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
