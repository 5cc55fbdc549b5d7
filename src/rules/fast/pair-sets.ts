import type { Interval } from '../../quantities/interval.ts';
import type { Against, Layer, PairCheck } from './pair-tables.ts';
import { notSurelyMet, surelyUnmet } from './ranks.ts';

/** Which families are looked for: those that fail, or those that do not surely pass. */
export type Wanted = 'fails' | 'does not pass';

/**
 * Looks up which families of a stand fail a pair check on these haves, or do not pass it. The set is good until the next is
 * looked up. A family fails where it fails in every layer, and does not pass where it does not in any.
 */
export function pairLookup(
  words: number,
  wanted: Wanted,
): (of: PairCheck, stand: number, haves: readonly Interval[]) => Uint32Array {
  const [out, layer, comparison, eased] = [set(words), set(words), set(words), set(words)];
  const all = wanted === 'fails';
  const addUnmet = (to: Uint32Array, against: Against, haves: readonly Interval[]): void =>
    addUnmetBy(wanted, to, against, haves);
  const inLayer = (of: Layer, haves: readonly Interval[]): void => {
    layer.fill(0);
    for (const { plain, easings } of of) {
      comparison.fill(0);
      addUnmet(comparison, plain, haves);
      for (const { helps, all: needs } of easings) {
        eased.fill(0);
        for (const each of needs) addUnmet(eased, each, haves);
        // a family that an easing helps is unmet only if the easing is
        for (let word = 0; word < words; word += 1)
          comparison[word] = at(comparison, word) & (~at(helps, word) | at(eased, word));
      }
      for (let word = 0; word < words; word += 1) layer[word] = at(layer, word) | at(comparison, word);
    }
  };
  return (of, stand, haves) => {
    out.fill(all ? EVERY : 0);
    for (const each of of.layers[stand] ?? []) {
      inLayer(each, haves);
      for (let word = 0; word < words; word += 1)
        out[word] = all ? at(out, word) & at(layer, word) : at(out, word) | at(layer, word);
    }
    return out;
  };
}

const EVERY = 0xffffffff;
const set = (words: number): Uint32Array => new Uint32Array(words);
const at = (sets: Uint32Array, word: number): number => sets[word] as number;

/** Adds the families whose need this have surely does not meet, or does not surely meet. */
function addUnmetBy(
  wanted: Wanted,
  to: Uint32Array,
  { ranks, have }: Against,
  haves: readonly Interval[],
): void {
  const there = haves[have] as Interval;
  const [rank, sets] =
    wanted === 'fails'
      ? [surelyUnmet(ranks, there), ranks.fromLeast]
      : [notSurelyMet(ranks, there), ranks.fromMost];
  for (let word = 0; word < to.length; word += 1) to[word] = at(to, word) | at(sets, rank * to.length + word);
}
