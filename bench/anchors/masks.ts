import { ANCHOR_CHECKS, type AnchorCheck } from './checks.ts';
import type { Anchor } from './counts.ts';
import type { Machine, Part, Rotary } from './world.ts';

const WORD = 32;

/** Needs of the parts in their order, and for each rank the parts up to it as bits, word by word. */
interface Ranked {
  readonly have: AnchorCheck['have'];
  readonly needs: Float64Array;
  readonly masks: Int32Array;
}

/**
 * Parts are ranked by need once a rotary. A have then finds how many parts hold, and which as a mask; the parts that
 * hold everywhere are an AND of masks. What does not hang on the mounting or the additions is looked up before them.
 */
export const rankedMasks: Anchor = (world) => () => {
  const { rotaries, machines, alongX, raised, parts } = world;
  const words = Math.ceil(parts.length / WORD);
  const masks = () => new Int32Array(words);
  const [all, byRotary, byMachine, byMounting, byAdditions] = [masks(), masks(), masks(), masks(), masks()];
  for (let part = 0; part < parts.length; part += 1) setBit(all, 0, part);
  let held = 0;
  let passed = 0;
  for (const rotary of rotaries) {
    const [ofRotary, ofMachine, ofMounting, ofAdditions] = HAVE_OF.map((haveOf) =>
      ANCHOR_CHECKS.filter((check) => check.haveOf === haveOf).map((check) => rankedBy(check, parts, rotary)),
    ) as [Ranked[], Ranked[], Ranked[], Ranked[]];
    // the first machine stands for any: these haves do not hang on it
    const [any] = machines as readonly [Machine];
    const inRotary = narrowed(ofRotary, all, byRotary, rotary, any, true, 0);
    held += inRotary * machines.length * alongX.length * raised.length;
    for (const machine of machines) {
      const inMachine = narrowed(ofMachine, byRotary, byMachine, rotary, machine, true, 0);
      held += inMachine * alongX.length * raised.length;
      for (const along of alongX) {
        held += narrowed(ofMounting, byMachine, byMounting, rotary, machine, along, 0) * raised.length;
        for (const raise of raised) {
          held += narrowed(ofAdditions, byMounting, byAdditions, rotary, machine, along, raise);
          for (let word = 0; word < words; word += 1) passed += bitsIn(byAdditions[word] as number);
        }
      }
    }
  }
  return { held, passed };
};

const HAVE_OF = ['rotary', 'machine', 'mounting', 'additions'] as const;

function rankedBy({ need, have }: AnchorCheck, parts: readonly Part[], rotary: Rotary): Ranked {
  const words = Math.ceil(parts.length / WORD);
  const ranked = parts
    .map((part, index) => ({ index, need: need(part, rotary) }))
    .sort((a, b) => a.need - b.need);
  const masks = new Int32Array((parts.length + 1) * words);
  for (const [rank, { index }] of ranked.entries()) {
    masks.copyWithin((rank + 1) * words, rank * words, (rank + 1) * words);
    setBit(masks, (rank + 1) * words, index);
  }
  return { have, needs: Float64Array.from(ranked, (each) => each.need), masks };
}

function setBit(masks: Int32Array, from: number, bit: number): void {
  const word = from + Math.floor(bit / WORD);
  masks[word] = (masks[word] as number) | (1 << (bit % WORD));
}

/** Puts what is left of `from` into `to`; gives how many verdicts hold. */
function narrowed(
  ranked: readonly Ranked[],
  from: Int32Array,
  to: Int32Array,
  rotary: Rotary,
  machine: Machine,
  alongX: boolean,
  raised: number,
): number {
  let held = 0;
  to.set(from);
  for (const { have, needs, masks } of ranked) {
    const rank = countUpTo(needs, have(rotary, machine, alongX, raised));
    held += rank;
    for (let word = 0; word < to.length; word += 1)
      to[word] = (to[word] as number) & (masks[rank * to.length + word] as number);
  }
  return held;
}

/** How many of these, in rising order, are no greater. */
function countUpTo(needs: Float64Array, have: number): number {
  let [low, high] = [0, needs.length];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((needs[middle] as number) <= have) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** How many bits of a word are set. */
export function bitsIn(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}
