import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { keysOf, numberAt, withNumber } from '../../rules/flips/value-at.ts';
import { DRAWN_ANSWERS, type DrawnKey } from './drawn-answers.ts';
import type { Side } from './recipe.ts';
import { onGrid } from './seeded.ts';

/** Where the rule stands on some answers. */
export interface Probe {
  readonly side: Side;
  /** how far from its line, as a share of the larger of both numbers; null: there is no near */
  readonly share: number | null;
  /** what comes of it hangs on this rule alone */
  readonly alone: boolean;
}

export interface Moved<Found extends Probe = Probe> {
  readonly answers: Answers;
  readonly probe: Found;
}

interface Walk<Found extends Probe> {
  readonly side: Side;
  /** near enough to the line, and not too near */
  readonly suits: (share: number | null) => boolean;
  /** farther than this share from the line need not be gone */
  readonly most: number;
  readonly at: (answers: Answers) => Found | null;
}

/**
 * Moves one answer on its grid until the rule stands on the side that is wanted, as far from its line as is wanted, and nothing
 * else stands in the way. Null: it does not get there in the range of the answer.
 */
export function moveTo<Found extends Probe>(
  key: DrawnKey,
  answers: Answers,
  catalog: Catalog,
  walk: Walk<Found>,
): Moved<Found> | null {
  const grid = gridOf(key, answers, catalog);
  if (grid === null) return null;
  const { start, ends, answersAt } = grid;
  const at: At<Found> = (count) => {
    const moved = answersAt(count);
    const probe = walk.at(moved);
    return probe === null ? null : { answers: moved, probe };
  };
  for (const [end, other] of [ends, ends.toReversed()] as readonly (readonly [number, number])[]) {
    const found = start === end ? null : toward([start, end, other], at, walk);
    if (found !== null) return found;
  }
  return null;
}

/** Answers with one of several moved just so far that the rule stands on the other side of its line; null: none gets it there. */
export function acrossFrom<Found extends Probe>(
  moves: readonly DrawnKey[],
  { answers, probe }: Moved<Found>,
  catalog: Catalog,
  at: (answers: Answers) => Found | null,
): Answers | null {
  const side: Side = probe.side === 'yes' ? 'no' : 'yes';
  const walk = { side, suits: () => true, most: Number.POSITIVE_INFINITY, at };
  for (const key of moves) {
    const moved = moveTo(key, answers, catalog, walk);
    if (moved !== null) return moved.answers;
  }
  return null;
}

/** An answer as whole steps: where it stands, how far it may go up and down, and the answers with it moved. Null: it is not there. */
function gridOf(key: DrawnKey, answers: Answers, catalog: Catalog) {
  const { of, path, least, most, step } = DRAWN_ANSWERS[key];
  const ground = { answers, catalog };
  const keys = keysOf(of === 'part' ? `parts[${answers.parts[0]?.name}].${path}` : path, ground);
  const from = keys === null ? null : numberAt(ground, keys);
  if (keys === null || from === null) return null;
  return {
    start: Math.round(from / step),
    ends: [Math.floor(most / step + 1e-9), Math.ceil(least / step - 1e-9)] as const,
    answersAt: (count: number): Answers => withNumber(ground, keys, onGrid(count * step)).answers,
  };
}

/** With an answer raised as far as everything still holds, the rule itself and all else. */
export function lastThatHolds<Found extends Probe>(
  key: DrawnKey,
  from: Moved<Found>,
  catalog: Catalog,
  at: (answers: Answers) => Found | null,
): Moved<Found> {
  const grid = gridOf(key, from.answers, catalog);
  if (grid === null) return from;
  let last = from;
  let [low, high] = [grid.start, grid.ends[0] + 1];
  while (high - low > 1) {
    const middle = Math.trunc((low + high) / 2);
    const answers = grid.answersAt(middle);
    const probe = at(answers);
    if (probe?.alone === true && probe.side === 'yes') {
      last = { answers, probe };
      low = middle;
    } else high = middle;
  }
  return last;
}

type At<Found extends Probe> = (count: number) => Moved<Found> | null;
type Fits<Found extends Probe> = (moved: Moved<Found>) => boolean;

/** How much of a number the first stride is; each further one is twice as long. */
const FIRST_STRIDE = 0.05;

/** In growing strides over the line, back to it in halves, and from there outward to the distance that is wanted. */
function toward<Found extends Probe>(
  [start, end, other]: readonly [start: number, end: number, other: number],
  at: At<Found>,
  { side, suits, most }: Walk<Found>,
): Moved<Found> | null {
  const fits: Fits<Found> = ({ probe }) => probe.alone && probe.side === side && suits(probe.share);
  const way = Math.sign(end - start);
  const first = at(start);
  if (first === null) return null;
  let [near, far] = [start, start];
  for (let stride = Math.max(1, Math.round(Math.abs(start) * FIRST_STRIDE)); ; stride *= 2) {
    far = limited(near + way * stride, end, way);
    const found = at(far);
    if (found === null) return null;
    if (fits(found)) return found;
    if (found.probe.side !== first.probe.side) break;
    // something else gives way long before
    if (!found.probe.alone || far === end) return null;
    near = far;
  }
  while (Math.abs(far - near) > 1) {
    const middle = Math.trunc((near + far) / 2);
    const found = at(middle);
    if (found === null) return null;
    if (fits(found)) return found;
    if (found.probe.side === first.probe.side) near = middle;
    else far = middle;
  }
  const beyond = side !== first.probe.side;
  return beyond ? outward(far, way, end, at, fits, most) : outward(near, -way, other, at, fits, most);
}

const limited = (count: number, end: number, way: number): number =>
  way > 0 ? Math.min(count, end) : Math.max(count, end);

/** From the line outward in growing strides, and back in halves once it is too far. */
function outward<Found extends Probe>(
  from: number,
  way: number,
  end: number,
  at: At<Found>,
  fits: Fits<Found>,
  most: number,
): Moved<Found> | null {
  const isTooFar = ({ probe }: Moved<Found>): boolean => (probe.share ?? 0) > most || !probe.alone;
  let [near, far] = [from, from];
  for (let stride = 1; ; stride *= 2) {
    far = limited(near + way * stride, end, way);
    const found = at(far);
    if (found === null) return null;
    if (fits(found)) return found;
    if (isTooFar(found)) break;
    if (far === end) return null;
    near = far;
  }
  while (Math.abs(far - near) > 1) {
    const middle = Math.trunc((near + far) / 2);
    const found = at(middle);
    if (found === null) return null;
    if (fits(found)) return found;
    if (isTooFar(found)) far = middle;
    else near = middle;
  }
  return null;
}
