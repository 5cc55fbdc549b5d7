import type { Answers } from '../../questions/answers.ts';
import { gapsOf, type Outcome } from '../judging/outcome.ts';
import type { Standing } from '../standing.ts';
import type { Judged } from '../weighing/judged.ts';
import { answersIn, type Bearing, openOf } from './bearing.ts';
import { chanceToFail } from './chance-to-fail.ts';
import { howLikelyKnown } from './how-likely-known.ts';

/** What is known of the field when questions are put in order. */
export interface Field {
  /** arrangements that may win, whatever the answers are */
  readonly contenders: readonly Judged[];
  /** the same, with what is not known where it usually lies */
  readonly usually: Standing;
  /** by the id of the arrangement */
  readonly bearings: ReadonlyMap<string, readonly Bearing[]>;
}

/**
 * For each answer that is not known: how many arrangements it is expected to drop, a share of one each, weighed by how
 * likely somebody knows it. An open check fails with some chance, with what is not known where it usually lies; that chance
 * is shared among the answers that it hangs on. What could drop something only if it were unusual counts a hundredth, what
 * moves the order alone less again: first on the measure that matters most.
 */
export function narrowings(
  { contenders, usually, bearings }: Field,
  answers: Answers,
): ReadonlyMap<string, number> {
  const drops = new Map<string, number>();
  const add = (answer: string, weight: number): void => {
    drops.set(answer, (drops.get(answer) ?? 0) + weight);
  };
  const ids = new Set(contenders.map(({ id }) => id));
  for (const each of usually.judged) {
    if (!ids.has(each.id)) continue;
    for (const [answer, chance] of chancesOf(each, USUAL_AT_LEAST)) add(answer, chance);
    for (const [answer, chance] of fallingShort(each, usually)) add(answer, chance);
  }
  for (const each of contenders) {
    for (const [answer, chance] of chancesOf(each, UNUSUAL_AT_LEAST)) add(answer, UNUSUAL * chance);
    for (const { answer, on } of bearings.get(each.id) ?? [])
      if (on !== 'passing') add(answer, orderWeight(answers.matters.indexOf(on), on === 'coverage'));
  }
  for (const { name, motion } of answers.parts)
    if (motion === 'unknown') add(`parts[${name}].motion`, MOVING * contenders.length);
  return new Map([...drops].map(([answer, weight]) => [answer, weight * howLikelyKnown(answer)]));
}

/** The chance that an open check is given at the least, with what is usual and with what is not. */
const USUAL_AT_LEAST = 0.01;
const UNUSUAL_AT_LEAST = 0.1;
/** What drops something only if it is unusual. */
const UNUSUAL = 0.01;
/** A part in ten is cut while the axes move, and then a third of what could hold it cannot move it so. */
const MOVING = 0.03;
/** A family that need not be held drops an arrangement only together with others. */
const NOT_A_MUST = 0.3;

/** Hours come last: what passes tells more of what is covered, and takes fewer questions. */
const orderWeight = (place: number, isHours: boolean): number =>
  1e-5 * 0.3 ** Math.max(0, place) * (isHours ? 0.1 : 1);

/** How likely each answer drops this arrangement by one of its checks. */
function chancesOf({ own, families }: Judged, atLeast: number): ReadonlyMap<string, number> {
  const stays = new Map<string, number>();
  const hold = (outcomes: readonly Outcome[], weight: number): void => {
    for (const outcome of openOf(outcomes)) {
      const on = answersIn(gapsOf(outcome));
      const chance = (weight * Math.max(atLeast, chanceToFail(outcome, on.length))) / on.length;
      for (const answer of on) stays.set(answer, (stays.get(answer) ?? 1) * (1 - chance));
    }
  };
  hold(own, 1);
  for (const { family, outcomes } of families)
    hold(outcomes, family.must || families.length === 1 ? 1 : NOT_A_MUST);
  return new Map([...stays].map(([answer, chance]) => [answer, 1 - chance]));
}

/** Where a family surely fails, too few of the hours may be left: how likely each answer about them drops it. */
function fallingShort(
  { coverage, families }: Judged,
  { shop }: Standing,
): readonly (readonly [string, number])[] {
  const { low, high } = coverage;
  const { leastCoverage } = shop.assume;
  if (low >= leastCoverage || high === low || families.every(({ verdict }) => verdict !== 'fails')) return [];
  const on = answersIn(families.flatMap(({ family }) => family.hours.gaps));
  return on.map((answer) => [answer, (leastCoverage - low) / (high - low) / on.length]);
}
