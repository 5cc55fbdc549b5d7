import type { WorkedWay } from '../examples/worked-check.ts';
import { workOut } from '../formula/work-out.ts';

/** What would have to be otherwise so that a wrong answer were right. */
export interface WouldBe {
  readonly words: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

type Side = 'need' | 'have' | 'margin';

const STEPS = 40;
const FARTHEST = 4;
const HALVINGS = 60;

/**
 * The smallest change of one given number, relative to itself, with which a side of a check comes to what was answered: looked
 * for from a quarter to four times of it. Null where no one number does it. Example: a circle of 120 instead of 100 mm → the
 * part off the axis by 10 mm.
 */
export function wouldBeRight({ formula, values }: WorkedWay, side: Side, wanted: number): WouldBe | null {
  let best: (WouldBe & { readonly away: number }) | null = null;
  for (const { symbol, words, unit } of formula.symbols) {
    const from = values[symbol];
    if (from === undefined || unit === '') continue;
    const off = (value: number): number => {
      try {
        return workOut(formula, { ...values, [symbol]: value })[side] - wanted;
      } catch {
        return Number.NaN;
      }
    };
    const to = rootNear(off, from);
    if (to === null) continue;
    const away = Math.abs(to - from) / (Math.abs(from) || Math.abs(wanted) || 1);
    if (best === null || away < best.away) best = { words, unit, from, to, away };
  }
  return best;
}

/** Where a number crosses zero, nearest to where one begins; from there outward in steps, then narrowed. */
function rootNear(off: (value: number) => number, from: number): number | null {
  const scale = Math.abs(from) || 100;
  const spots = Array.from({ length: STEPS + 1 }, (_, index) => index / STEPS);
  for (const [index, share] of spots.entries()) {
    const before = spots[index - 1];
    if (before === undefined) continue;
    const up: readonly [number, number] = [
      from + before * scale * (FARTHEST - 1),
      from + share * scale * (FARTHEST - 1),
    ];
    const down: readonly [number, number] = [from - before * scale, from - share * scale];
    for (const [a, b] of [up, down]) {
      if (Math.min(a, b) < Math.min(0, from)) continue;
      const [atA, atB] = [off(a), off(b)];
      if (atA === 0) return a;
      if (atA * atB <= 0) return narrowed(off, a, b);
    }
  }
  return null;
}

function narrowed(off: (value: number) => number, a: number, b: number): number | null {
  let [low, high] = [a, b];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle = (low + high) / 2;
    if (off(low) * off(middle) <= 0) high = middle;
    else low = middle;
  }
  const found = (low + high) / 2;
  // a jump is no crossing
  return Math.abs(off(found)) <= 1e-6 * Math.max(1, Math.abs(off(a))) ? found : null;
}
