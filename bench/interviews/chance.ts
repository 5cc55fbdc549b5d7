/** Numbers by chance that are the same for the same seed. */
export interface Chance {
  /** from 0 up to 1 */
  readonly next: () => number;
  /** one of these, each as likely */
  readonly pick: <Item>(items: readonly [Item, ...Item[]]) => Item;
  /** from low to high, in whole steps from low */
  readonly between: (low: number, high: number, step?: number) => number;
  readonly happens: (share: number) => boolean;
}

/** Mulberry32: a small generator of good quality, by its published steps (from memory). */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    pick: (items) => items[Math.floor(next() * items.length)] ?? items[0],
    between: (low, high, step = 1) => {
      const steps = Math.floor((high - low) / step + 1e-9);
      return Number((low + step * Math.floor(next() * (steps + 1))).toPrecision(12));
    },
    happens: (share) => next() < share,
  };
}
