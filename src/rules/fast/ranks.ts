import type { Interval } from '../../quantities/interval.ts';
import type { Sense } from '../judging/check.ts';
import { atMost } from '../judging/compare.ts';
import { addTo } from './family-bits.ts';

/**
 * Needs of families, ranked once, so that one search in the ranks says of a have which of them it surely does not meet, and
 * which it does not surely meet.
 */
export interface Ranks {
  readonly sense: Sense;
  readonly count: number;
  /** the least that each may need, rising; behind each rank the set of all families from it on */
  readonly least: Float64Array;
  readonly fromLeast: Uint32Array;
  /** the most that each may need, rising */
  readonly most: Float64Array;
  readonly fromMost: Uint32Array;
}

export interface Ranked {
  readonly family: number;
  readonly need: Interval;
}

/** A floor is met from above: turned round it is a ceiling. Example: need 5 ≥ have 3 → −5 ≤ −3. */
const turned = (sense: Sense, { low, high }: Interval): Interval =>
  sense === 'at-most' ? { low, high } : { low: -high, high: -low };

export function ranksOf(sense: Sense, needs: readonly Ranked[], words: number): Ranks {
  const all = needs.map(({ family, need }) => ({ family, ...turned(sense, need) }));
  const byLeast = all.toSorted((a, b) => a.low - b.low || 0);
  const byMost = all.toSorted((a, b) => a.high - b.high || 0);
  return {
    sense,
    count: all.length,
    least: Float64Array.from(byLeast, ({ low }) => low),
    fromLeast: setsFrom(byLeast, words),
    most: Float64Array.from(byMost, ({ high }) => high),
    fromMost: setsFrom(byMost, words),
  };
}

function setsFrom(ranked: readonly { readonly family: number }[], words: number): Uint32Array {
  const sets = new Uint32Array((ranked.length + 1) * words);
  for (let rank = ranked.length - 1; rank >= 0; rank -= 1) {
    sets.copyWithin(rank * words, (rank + 1) * words, (rank + 2) * words);
    addTo(sets, rank * words, ranked[rank]?.family ?? 0);
  }
  return sets;
}

/** Where in `fromLeast` the set begins of those that the have surely does not meet. */
export const surelyUnmet = (ranks: Ranks, low: number, high: number): number =>
  firstAbove(ranks.least, ranks.count, ranks.sense === 'at-most' ? high : -low);

/** Where in `fromMost` the set begins of those that the have does not surely meet. */
export const notSurelyMet = (ranks: Ranks, low: number, high: number): number =>
  firstAbove(ranks.most, ranks.count, ranks.sense === 'at-most' ? low : -high);

/** The first rank that is not at most this much. */
function firstAbove(rising: Float64Array, count: number, limit: number): number {
  // most haves meet all needs
  if (count === 0 || atMost(rising[count - 1] as number, limit)) return count;
  let [from, to] = [0, count - 1];
  while (from < to) {
    const middle = (from + to) >>> 1;
    if (atMost(rising[middle] as number, limit)) from = middle + 1;
    else to = middle;
  }
  return from;
}
