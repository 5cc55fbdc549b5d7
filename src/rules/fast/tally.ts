import type { CheckId } from '../checks/ids.ts';
import type { RotaryCount } from '../decision.ts';

/** What became of arrangements that nobody judged to the end, by their rotary. */
export type Tally = Map<string, { count: number; left: number; dropped: Partial<Record<CheckId, number>> }>;

function of(tally: Tally, rotary: string) {
  const known = tally.get(rotary) ?? { count: 0, left: 0, dropped: {} };
  tally.set(rotary, known);
  return known;
}

/** One more that a check dropped. */
export function tallyDrop(tally: Tally, rotary: string, { id }: { readonly id: CheckId }): void {
  const known = of(tally, rotary);
  known.count += 1;
  known.dropped[id] = (known.dropped[id] ?? 0) + 1;
}

/** One more that nothing dropped. */
export function tallyLeft(tally: Tally, rotary: string): void {
  const known = of(tally, rotary);
  known.count += 1;
  known.left += 1;
}

export const countsOf = (tally: Tally): readonly RotaryCount[] =>
  [...tally].map(([rotary, each]) => ({ rotary, ...each }));
