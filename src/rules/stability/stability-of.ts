import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers, Measure } from '../../questions/answers.ts';
import type { Stability } from '../decision-stability.ts';
import { type Ground, withRange } from '../flips/value-at.ts';
import { runningOf, type Standing } from '../standing.ts';
import { DOMINATING } from '../weighing/dominance.ts';
import type { Ranked } from '../weighing/scores.ts';
import { type Known, knownOf, stillWins, surelyRuns } from './challenge.ts';
import { type Movable, movableAnswers } from './movable-answers.ts';
import { creeping, type Found, farthest, throughChanges } from './outward.ts';
import { roundedInward } from './rounded-inward.ts';

/**
 * How far each numeric answer may move while the recommendation stays; empty where nothing is recommended. A piece of
 * the range is judged as a whole, with the answer as an interval: what is recommended then is so for every value in it.
 * Only where another arrangement changes, or where the margin alone tells two apart, are pieces of a few hundredths said
 * by values in them. An end may be too near, also because the search for it was given up.
 */
export function stabilityOf(
  { ranking, running, shop }: Standing,
  from: { readonly answers: Answers; readonly catalog: Catalog },
): readonly Stability[] {
  const winner = running.find(({ id }) => id === ranking.winner);
  if (winner === undefined) return [];
  const movable = movableAnswers(from.answers);
  const groups = new Map<string, Known>();
  const knownWhile = (group: string): Known => {
    const known =
      groups.get(group) ??
      knownOf(
        anywhere(
          movable.filter((each) => each.group === group),
          from,
        ),
      );
    groups.set(group, known);
    return known;
  };
  const { band } = shop.assume;
  return movable.map((each) => rangeOf(each, { winner, from, known: knownWhile(each.group), band }));
}

/** All of these answers anywhere in their domains at once: what fails then fails whichever of them moves. */
function anywhere(movable: readonly Movable[], from: Ground): Standing {
  const { answers, catalog } = movable.reduce(
    (ground, { keys, domain }) => withRange(ground, keys, [domain.low, domain.high]),
    from,
  );
  return runningOf(answers, catalog);
}

interface Around {
  readonly winner: Ranked;
  readonly from: Ground;
  readonly known: Known;
  readonly band: number;
}

function rangeOf(movable: Movable, around: Around): Stability {
  const { answer, at, domain, whole } = movable;
  const [low, high] = [domain.low, domain.high].map((to) => {
    const { far, gaveUp } = endToward(to, movable, around);
    return far === to ? OPEN_END : { value: roundedInward(far, at, whole), gaveUp };
  });
  return {
    answer,
    at,
    low: low?.value ?? null,
    high: high?.value ?? null,
    givenUp: [...(low?.gaveUp ? (['low'] as const) : []), ...(high?.gaveUp ? (['high'] as const) : [])],
  };
}

const OPEN_END = { value: null, gaveUp: false } as const;

interface End {
  readonly far: number;
  /** more would have to be judged than is worth the time */
  readonly gaveUp: boolean;
}

/**
 * The whole way at once, where that can be shown. Else as far as the winner stays just as good as it is, which the winner
 * alone says, and the others on that way; from there on piece by piece.
 */
function endToward(to: number, { keys, at, whole }: Movable, { winner, from, known, band }: Around): End {
  if (to === at) return { far: at, gaveUp: false };
  const moving = { ground: from, keys, band, effort: { left: MOST_JUDGED } };
  const run = (a: number, b: number): Ranked | null => surelyRuns(moving, winner.id, a, b);
  const look = (a: number, b: number, among: Known): Found<Known> => {
    const its = run(a, b);
    return its === null ? { is: 'open', known: among } : stillWins(moving, its, among, a, b);
  };
  const there = run(at, to);
  if (
    there !== null &&
    isSame(SET_UP, there, winner) &&
    stillWins(moving, there, known, at, to).is === 'stays'
  )
    return { far: to, gaveUp: false };
  const spent = (): boolean => moving.effort.left <= 0;
  if (whole) {
    const found = wholeNumbers(at, to, (next) => look(next, next, known).is === 'stays');
    return { ...found, gaveUp: found.gaveUp || spent() };
  }
  const way = { at, end: to };
  const same = farthest(way, (a, b) => {
    const its = run(a, b);
    return its !== null && isSame(DOMINATING, its, winner);
  });
  const far = throughChanges(way, same, known, look);
  return { far: far === same ? creeping(way, same, known, look) : far, gaveUp: spent() };
}

/** Others that are judged on the way to one end, at most: farther is not worth the time. */
const MOST_JUDGED = 150;

/** More steps than these are not taken one by one. */
const MOST_STEPS = 20;

/** One whole number after the other: there is nothing between them. */
function wholeNumbers(at: number, to: number, stays: (value: number) => boolean): End {
  const way = Math.sign(to - at);
  let proven = at;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const next = proven + way;
    // the last whole number before the end is as far as it goes
    if ((to - next) * way < 0) return { far: to, gaveUp: false };
    if (!stays(next)) return { far: proven, gaveUp: false };
    proven = next;
  }
  return { far: proven, gaveUp: true };
}

/** It costs the same and leaves the same room: what may be another is what is done on it, and what that saves. */
const SET_UP = ['price', 'viseStations', 'swapHours'] as const;

/** None of these measures of it is another than it was. */
const isSame = (
  measures: readonly Measure[],
  { measures: now }: Ranked,
  { measures: was }: Ranked,
): boolean =>
  measures.every(
    (measure) => now[measure]?.low === was[measure]?.low && now[measure]?.high === was[measure]?.high,
  );
