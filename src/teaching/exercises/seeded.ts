import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Draws that come out the same for the same seed, on every computer. */
export interface Seeded {
  /** a whole number, both ends among them */
  readonly whole: (least: number, most: number) => number;
  /** one of several; throws where there are none */
  readonly oneOf: <Each>(some: readonly Each[]) => Each;
  /** all of them in another order */
  readonly shuffled: <Each>(some: readonly Each[]) => readonly Each[];
  /** a number on the grid of a step, as a share between two numbers. Example: between(100, 0.3, 0.4, 5) → 30, 35 or 40 */
  readonly share: (of: number, least: number, most: number, step: number) => number;
}

/** What is drawn for a seed (a whole number) and a few words that tell one row of draws from another. */
export function seededBy(seed: number, ...about: readonly string[]): Seeded {
  const generator = xoroshiro128plus(mixed(seed, about.join(' ')));
  const whole = (least: number, most: number): number => uniformInt(generator, least, most);
  const oneOf = <Each>(some: readonly Each[]): Each => {
    const found = some[whole(0, some.length - 1)];
    if (found === undefined) throw new RangeError('there is nothing to draw from');
    return found;
  };
  return {
    whole,
    oneOf,
    shuffled: (some) => {
      const all = [...some];
      for (let at = all.length - 1; at > 0; at -= 1) {
        const other = whole(0, at);
        const [a, b] = [all[at], all[other]];
        if (a !== undefined && b !== undefined) [all[at], all[other]] = [b, a];
      }
      return all;
    },
    share: (of, least, most, step) => {
      const [low, high] = [Math.ceil((of * least) / step), Math.floor((of * most) / step)];
      return onGrid(whole(Math.min(low, high), Math.max(low, high)) * step);
    },
  };
}

/** 0.1 · 3 → 0.3: steps are decimal, so what stands on their grid has few digits. */
export const onGrid = (value: number): number => Number(value.toPrecision(10));

/** Words and a seed as one whole number of 32 bits (the hash FNV-1a). */
function mixed(seed: number, words: string): number {
  let hash = 0x811c9dc5 ^ (seed | 0);
  for (const letter of words) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return hash | 0;
}
