import type { Against, Layer, PairCheck } from './pair-tables.ts';
import { notSurelyMet, surelyUnmet } from './ranks.ts';

/** Which families are looked for: those that fail, or those that do not surely pass. */
export type Wanted = 'fails' | 'does not pass';

/** The set of families; good until the next is looked up. The haves of a row begin at `from`, low and high by turns. */
export type Lookup = (of: PairCheck, stand: number, haves: Float64Array, from: number) => Uint32Array;

/**
 * Looks up which families of a stand fail a pair check on these haves, or do not pass it. A family fails where it fails in
 * every layer, and does not pass where it does not in any.
 */
export function pairLookup(words: number, wanted: Wanted): Lookup {
  const [out, layer, comparison, eased] = [set(words), set(words), set(words), set(words)];
  const all = wanted === 'fails';
  /** Adds the families whose need the have surely does not meet, or does not surely meet. False: there is none. */
  const addUnmet = (
    to: Uint32Array,
    { ranks, have }: Against,
    haves: Float64Array,
    from: number,
  ): boolean => {
    const low = haves[from + have * 2] as number;
    const high = haves[from + have * 2 + 1] as number;
    const rank = all ? surelyUnmet(ranks, low, high) : notSurelyMet(ranks, low, high);
    if (rank === ranks.count) return false;
    const sets = all ? ranks.fromLeast : ranks.fromMost;
    for (let word = 0; word < words; word += 1) to[word] = at(to, word) | at(sets, rank * words + word);
    return true;
  };
  /** False: nothing is in it. */
  const inLayer = (of: Layer, haves: Float64Array, from: number): boolean => {
    let some = false;
    layer.fill(0);
    for (const { plain, easings } of of) {
      comparison.fill(0);
      if (!addUnmet(comparison, plain, haves, from)) continue;
      for (const { helps, all: needs } of easings) {
        eased.fill(0);
        for (const each of needs) addUnmet(eased, each, haves, from);
        // a family that an easing helps is unmet only if the easing is
        for (let word = 0; word < words; word += 1)
          comparison[word] = at(comparison, word) & (~at(helps, word) | at(eased, word));
      }
      some = true;
      for (let word = 0; word < words; word += 1) layer[word] = at(layer, word) | at(comparison, word);
    }
    return some;
  };
  return (of, stand, haves, from) => {
    out.fill(all ? EVERY : 0);
    for (const each of of.layers[stand] ?? []) {
      if (!inLayer(each, haves, from) && all) return out.fill(0);
      for (let word = 0; word < words; word += 1)
        out[word] = all ? at(out, word) & at(layer, word) : at(out, word) | at(layer, word);
    }
    return out;
  };
}

const EVERY = 0xffffffff;
const set = (words: number): Uint32Array => new Uint32Array(words);
const at = (sets: Uint32Array, word: number): number => sets[word] as number;
