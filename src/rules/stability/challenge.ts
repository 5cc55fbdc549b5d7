import type { Answers } from '../../questions/answers.ts';
import { type Ground, type Keys, withRange } from '../flips/value-at.ts';
import { runningOf, type Standing } from '../standing.ts';
import { unbeaten } from '../weighing/dominance.ts';
import { type Ranking, rankBy } from '../weighing/rank.ts';
import type { Ranked } from '../weighing/scores.ts';
import type { Found } from './outward.ts';

/** What is known of all that may run over a range of answers: those that are not among them surely fail there. */
export type Known = ReadonlyMap<string, Ranked>;

/** What may run as things stand. */
export const knownOf = ({ running }: Standing): Known => new Map(running.map((each) => [each.id, each]));

/** One answer that moves, everything else as it is. */
export interface Moving {
  readonly ground: Ground;
  readonly keys: Keys;
  readonly band: number;
  /** how many more others may be judged on this way; what is not known by then is taken for a change */
  readonly effort: { left: number };
}

/** These arrangements with the answer anywhere between two values; those that surely fail there are left out. */
function judged(
  { ground, keys }: Moving,
  ids: readonly string[],
  from: number,
  to: number,
): readonly Ranked[] {
  const { answers, catalog } = withRange(ground, keys, [Math.min(from, to), Math.max(from, to)]);
  return runningOf(answers, catalog, new Set(ids)).running;
}

/** How one arrangement stands with the answer anywhere between two values; null: it fails there, or may. */
export function surelyRuns(moving: Moving, id: string, from: number, to: number): Ranked | null {
  const [only] = judged(moving, [id], from, to);
  return only?.surely === true ? only : null;
}

/**
 * Whether the winner wins with the answer anywhere between two values. Another arrangement is judged anew only where it
 * stands in the way with what is known of it: what is known of a wider range is good for a narrower one.
 */
export function stillWins(
  moving: Moving,
  winner: Ranked,
  known: Known,
  from: number,
  to: number,
): Found<Known> {
  const { ground, band } = moving;
  const now = new Map<string, Ranked>();
  // corners are those of the range that they were worked out for: of another one they compare nothing
  for (const [id, { atCorners: _ofAnother, ...each }] of known) now.set(id, each);
  now.set(winner.id, winner);
  const fresh = new Set([winner.id]);
  for (;;) {
    const { field, ranking } = rankedBy(now, ground.answers, band);
    if (ranking.winner === winner.id) return { is: 'stays', known: now };
    if (!ranking.contenders.includes(winner.id)) return { is: 'goes', known: now };
    const mayWin = ranking.contenders.filter((id) => !fresh.has(id));
    // what cannot win itself may still seem to drop the winner on the way
    const inTheWay = mayWin.length > 0 ? mayWin : field.flatMap(({ id }) => (fresh.has(id) ? [] : [id]));
    if (inTheWay.length === 0 || moving.effort.left <= 0)
      return { is: isUpToMargin(winner.id, ranking) ? 'by margin' : 'open', known: now };
    moving.effort.left -= inTheWay.length;
    const found = new Map(judged(moving, inTheWay, from, to).map((each) => [each.id, each]));
    for (const id of inTheWay) {
      fresh.add(id);
      const its = found.get(id);
      if (its === undefined) now.delete(id);
      else now.set(id, its);
    }
  }
}

/** Up to the room to spare it is surely level with the best. */
function isUpToMargin(winner: string, { steps }: Ranking): boolean {
  const at = steps.findIndex(({ measure }) => measure === 'margin');
  if (at < 0) return false;
  const before = steps[at - 1];
  return before === undefined || before.stays.some(({ id, surely }) => id === winner && surely);
}

function rankedBy(known: Known, { matters }: Answers, band: number) {
  const field = unbeaten([...known.values()]);
  return { field, ranking: rankBy(matters, band, field) };
}
