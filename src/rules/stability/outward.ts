/** The first step outward, as a share of the value that has been reached (from zero: of one, where the way is that long). */
const FIRST_STEP = 0.1;
/** How finely it is found where the winner stops being as good as it was, as the same share. */
const FINE = 0.02;
/** How finely it is found where the recommendation goes to another. */
const HAIR = 0.02;
/** How finely where nothing but the room to spare tells arrangements apart: that rises and falls without a jump. */
const BY_MARGIN = 0.05;
/** A step near zero is taken as if this share of the answer had been reached; of an answer of zero, of one. */
const LEAST = 0.1;

/** The answer that moves, and where it could go at most. */
export interface Way {
  readonly at: number;
  readonly end: number;
}

/** Says of a piece as a whole whether it stays there, whichever end comes first. */
export type Stays = (from: number, to: number) => boolean;

/** From a value toward an end as far as it stays, piece by piece. */
export function farthest(way: Way, stays: Stays): number {
  const { at, end } = way;
  let proven = at;
  let share = FIRST_STEP;
  while (proven !== end && share >= FINE) {
    const next = onward(way, proven, share);
    if (stays(proven, next)) {
      proven = next;
      share *= 2;
    } else share /= 3;
  }
  return proven;
}

/**
 * How a piece came out: it stays for every value in it, for none, or nobody can say; `by margin`: only because some are
 * told apart by their room to spare.
 */
export interface Found<Known> {
  readonly is: 'stays' | 'goes' | 'open' | 'by margin';
  readonly known: Known;
}

/** Says how a piece came out, with what is known of the others so far. */
export type Look<Known> = (from: number, to: number, known: Known) => Found<Known>;

/**
 * The same where others change on the way: the whole of it, else piece by piece, a piece of which nobody can say shortened
 * down to a hair. Of a hair it is said by its middle and its far end: whatever changes within it was one way before, and
 * is the other way after.
 */
export function throughChanges<Known>(way: Way, to: number, known: Known, look: Look<Known>): number {
  const whole = look(way.at, to, known);
  if (whole.is === 'stays') return to;
  return piecewise(way, way.at, to, FIRST_STEP, whole.known, look);
}

/** Onward from where it is likely to end: first a point a little farther on. */
export function creeping<Known>(way: Way, from: number, known: Known, look: Look<Known>): number {
  if (from === way.end) return from;
  const next = onward(way, from, HAIR);
  return look(next, next, known).is === 'stays' ? piecewise(way, from, way.end, HAIR, known, look) : from;
}

function piecewise<Known>(
  way: Way,
  from: number,
  to: number,
  firstStep: number,
  known: Known,
  look: Look<Known>,
): number {
  let proven = from;
  let share = firstStep;
  while (proven !== to) {
    const beyond = onward(way, proven, share);
    const next = to > from ? Math.min(to, beyond) : Math.max(to, beyond);
    const found = look(proven, next, known);
    if (found.is === 'goes') return proven;
    const isHair = share <= (found.is === 'by margin' ? BY_MARGIN : HAIR);
    const middle = (proven + next) / 2;
    const stays =
      found.is === 'stays' ||
      (isHair && [next, middle].every((value) => look(value, value, found.known).is === 'stays'));
    if (stays) {
      proven = next;
      share *= 2;
    } else if (share <= HAIR) return proven;
    else share = Math.max(HAIR, share / 3);
  }
  return proven;
}

function onward(way: Way, from: number, share: number): number {
  const step = share * sizeAt(way, from);
  return way.end > from ? Math.min(way.end, from + step) : Math.max(way.end, from - step);
}

const sizeAt = ({ at, end }: Way, reached: number): number =>
  Math.max(Math.abs(reached), LEAST * (at === 0 ? Math.min(Math.abs(end), 1) : Math.abs(at)));
