import type { Family } from '../arranging/family.ts';

/** The families of a mix as bits: a set of them is a few words of 32. */
export interface FamilyBits {
  readonly families: readonly Family[];
  readonly words: number;
  /** those that the choice must hold */
  readonly musts: Uint32Array;
  /** the most hours of all of them */
  readonly all: number;
  /** hours of a set of families */
  readonly hours: (set: Uint32Array, end: 'low' | 'high', at?: number) => number;
}

export const bitsOf = (families: readonly Family[]): FamilyBits => {
  const words = Math.max(1, Math.ceil(families.length / 32));
  const musts = new Uint32Array(words);
  families.forEach(({ must }, index) => {
    if (must) addTo(musts, 0, index);
  });
  return {
    families,
    words,
    musts,
    all: families.reduce((sum, { hours }) => sum + hours.high, 0),
    hours: hoursBy(families, words),
  };
};

/** Puts a family into the set that begins at a word. */
export function addTo(sets: Uint32Array, from: number, index: number): void {
  const at = from + (index >>> 5);
  sets[at] = ((sets[at] ?? 0) | (1 << (index & 31))) >>> 0;
}

export const holdsBit = (sets: Uint32Array, from: number, index: number): boolean =>
  (((sets[from + (index >>> 5)] ?? 0) >>> (index & 31)) & 1) === 1;

/** May an arrangement pass with the families that are not in this set of those that fail? */
export function mayPassWithout(bits: FamilyBits, fails: Uint32Array, leastCoverage: number): boolean {
  const { words, musts, hours, all } = bits;
  for (let word = 0; word < words; word += 1)
    if (((fails[word] as number) & (musts[word] as number)) !== 0) return false;
  const possible = all - hours(fails, 'high');
  return possible > 1e-9 && possible / (possible + hours(fails, 'low')) >= leastCoverage - 1e-9;
}

/** Sums of hours are looked up byte by byte: a whole market asks for millions of them. */
function hoursBy(families: readonly Family[], words: number): FamilyBits['hours'] {
  const sums = { low: byteSums(families, words, 'low'), high: byteSums(families, words, 'high') };
  return (set, end, at = 0) => {
    const table = sums[end];
    let sum = 0;
    for (let word = 0; word < words; word += 1) {
      const bits = set[at + word] ?? 0;
      if (bits === 0) continue;
      for (let byte = 0; byte < 4; byte += 1)
        sum += table[((word * 4 + byte) << 8) | ((bits >>> (byte * 8)) & 255)] ?? 0;
    }
    return sum;
  };
}

function byteSums(families: readonly Family[], words: number, end: 'low' | 'high'): Float64Array {
  const table = new Float64Array(words * 4 * 256);
  for (let byte = 0; byte < words * 4; byte += 1)
    for (let bits = 0; bits < 256; bits += 1) {
      let sum = 0;
      for (let bit = 0; bit < 8; bit += 1)
        if (((bits >>> bit) & 1) === 1) sum += families[byte * 8 + bit]?.hours[end] ?? 0;
      table[(byte << 8) | bits] = sum;
    }
  return table;
}
