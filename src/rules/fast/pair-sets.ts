import type { Interval } from '../../quantities/interval.ts';
import type { Against, Layer, PairCheck } from './pair-tables.ts';
import { notSurelyMet, surelyUnmet } from './ranks.ts';

/** Sets of families of one check: those that fail, and those that do not pass. */
export interface Found {
  readonly fails: Uint32Array;
  readonly notPassing: Uint32Array;
}

/** Room to work in; made once, used for millions of pairs. */
interface Scratch {
  readonly layer: Found;
  readonly comparison: Found;
  readonly eased: Found;
}

export const foundIn = (words: number): Found => ({
  fails: new Uint32Array(words),
  notPassing: new Uint32Array(words),
});

/** Looks up which families of a stand fail a pair check on these haves. */
export function pairLookup(
  words: number,
): (of: PairCheck, stand: number, haves: readonly Interval[]) => Found {
  const out = foundIn(words);
  const scratch: Scratch = { layer: foundIn(words), comparison: foundIn(words), eased: foundIn(words) };
  return (of, stand, haves) => {
    out.fails.fill(ALL);
    out.notPassing.fill(0);
    for (const layer of of.layers[stand] ?? []) {
      inLayer(layer, haves, words, scratch);
      for (let word = 0; word < words; word += 1) {
        out.fails[word] = at(out.fails, word) & at(scratch.layer.fails, word);
        out.notPassing[word] = at(out.notPassing, word) | at(scratch.layer.notPassing, word);
      }
    }
    return out;
  };
}

const ALL = 0xffffffff;
const at = (sets: Uint32Array, word: number): number => sets[word] as number;

function inLayer(layer: Layer, haves: readonly Interval[], words: number, scratch: Scratch): void {
  const { layer: found, comparison: one } = scratch;
  found.fails.fill(0);
  found.notPassing.fill(0);
  for (const { plain, easings } of layer) {
    one.fails.fill(0);
    one.notPassing.fill(0);
    addUnmet(one, plain, haves, words);
    for (const { helps, all } of easings) easeWith(one, helps, all, haves, words, scratch.eased);
    for (let word = 0; word < words; word += 1) {
      found.fails[word] = at(found.fails, word) | at(one.fails, word);
      found.notPassing[word] = at(found.notPassing, word) | at(one.notPassing, word);
    }
  }
}

/** Adds the families whose need this have does not meet. */
function addUnmet(to: Found, { ranks, have }: Against, haves: readonly Interval[], words: number): void {
  const there = haves[have] as Interval;
  const failing = surelyUnmet(ranks, there) * words;
  const unsure = notSurelyMet(ranks, there) * words;
  for (let word = 0; word < words; word += 1) {
    to.fails[word] = at(to.fails, word) | at(ranks.fromLeast, failing + word);
    to.notPassing[word] = at(to.notPassing, word) | at(ranks.fromMost, unsure + word);
  }
}

/** A family that an easing helps fails only if the easing fails as well. */
function easeWith(
  one: Found,
  helps: Uint32Array,
  all: readonly Against[],
  haves: readonly Interval[],
  words: number,
  eased: Found,
): void {
  eased.fails.fill(0);
  eased.notPassing.fill(0);
  for (const each of all) addUnmet(eased, each, haves, words);
  for (let word = 0; word < words; word += 1) {
    const others = ~at(helps, word);
    one.fails[word] = at(one.fails, word) & (others | at(eased.fails, word));
    one.notPassing[word] = at(one.notPassing, word) & (others | at(eased.notPassing, word));
  }
}
