import type { Answers } from '../../questions/answers.ts';
import type { Family } from '../arranging/family.ts';
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
  const usual = new Map(usually.judged.map((each) => [each.id, each]));
  const stays = new Map<string, number>();
  for (const each of contenders) {
    for (const [answer, chance] of chancesOf(each, UNUSUAL_AT_LEAST)) add(answer, UNUSUAL * chance);
    const there = usual.get(each.id);
    if (there === undefined) continue;
    const chances = chancesOf(there, USUAL_AT_LEAST, failingIn(each, there));
    stays.set(
      each.id,
      [...chances.values()].reduce((all, chance) => all * (1 - chance), 1),
    );
    for (const [answer, chance] of chances) add(answer, chance);
    for (const [answer, chance] of fallingShort(there, usually)) add(answer, chance);
  }
  const most = Math.max(0, ...contenders.map(({ coverage }) => coverage.high));
  const isFound = contenders.some((each) => isBeyondDoubt(each, bearings, most));
  for (const [answer, others] of inOrder(contenders, bearings, answers, isFound)) add(answer, others);
  const behind = ({ id, coverage }: Judged): number =>
    isFound
      ? 0
      : (contenders.length - 1) * (coverage.high < most ? BEHIND_LESS : BEHIND_MOST) * (stays.get(id) ?? 0);
  for (const [answer, others] of inDoubt(contenders, bearings, behind)) add(answer, others);
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

/** Whether it surely passes, and covers as much as any other may. */
const isBeyondDoubt = (each: Judged, bearings: Field['bearings'], most: number): boolean =>
  each.coverage.high >= most && (bearings.get(each.id) ?? []).every(({ on }) => on !== 'passing');

/**
 * What keeps an arrangement in doubt may drop it, however unlikely that seems; and while none is beyond doubt, others drop
 * behind the first that is. For each answer that keeps some in doubt: how many that is expected to drop, shared among all
 * the answers that do so. `behind`: how many drop behind an arrangement once it is beyond doubt.
 */
function inDoubt(
  contenders: readonly Judged[],
  bearings: Field['bearings'],
  behind: (each: Judged) => number,
): ReadonlyMap<string, number> {
  const [others, itself] = [new Map<string, number>(), new Map<string, number>()];
  for (const each of contenders) {
    const on = new Set(
      (bearings.get(each.id) ?? []).flatMap(({ answer, check }) => (check !== null ? [answer] : [])),
    );
    const share = behind(each) / on.size ** 2;
    for (const answer of on) {
      others.set(answer, Math.max(others.get(answer) ?? 0, share));
      itself.set(answer, (itself.get(answer) ?? 0) + DOUBT / on.size);
    }
  }
  return new Map([...itself].map(([answer, drops]) => [answer, drops + (others.get(answer) ?? 0)]));
}

/** How likely what is in doubt drops after all. */
const DOUBT = 0.1;
/** The share of the others that drops behind one that covers the most, and behind one that covers less. */
const BEHIND_MOST = 0.5;
const BEHIND_LESS = 0.05;

/**
 * What moves the order drops as many as it moves, once one is beyond doubt (`isFound`): as likely as not on the measure that matters
 * most of those that are open, seldom on one after it. Before, it drops nothing. Hours count little where it is open which
 * families are held: that tells more of what is covered, and takes fewer questions.
 */
function inOrder(
  contenders: readonly Judged[],
  bearings: Field['bearings'],
  { matters }: Answers,
  isFound: boolean,
): readonly (readonly [string, number])[] {
  const drops = isFound ? 0.5 : 1e-5;
  const ordering = contenders.map((each) => {
    const all = (bearings.get(each.id) ?? []).filter(({ on }) => on !== 'passing');
    return { all, isHeld: each.families.every(({ verdict }) => verdict !== 'open') };
  });
  const open = matters.filter((measure) => ordering.some(({ all }) => all.some(({ on }) => on === measure)));
  return ordering.flatMap(({ all, isHeld }) =>
    open.flatMap((measure, place) => {
      const on = new Set(all.flatMap((each) => (each.on === measure ? [each.answer] : [])));
      const weight = drops * LATER ** place * (measure === 'coverage' && !isHeld ? 0.1 : 1);
      return [...on].map((answer) => [answer, weight / on.size] as const);
    }),
  );
}

/** How much less each measure counts than the one before it. */
const LATER = 0.3;

/** How likely each answer drops this arrangement by one of its checks; `failing`: more checks, that nearly surely fail. */
function chancesOf(
  { own, families }: Judged,
  atLeast: number,
  failing: readonly (readonly [outcome: Outcome, weight: number])[] = [],
): ReadonlyMap<string, number> {
  const stays = new Map<string, number>();
  const hold = (outcome: Outcome, chanceWith: (unknowns: number) => number): void => {
    const on = answersIn(gapsOf(outcome));
    const chance = chanceWith(on.length);
    for (const answer of on) stays.set(answer, (stays.get(answer) ?? 1) * (1 - chance / on.length));
  };
  const all = (outcomes: readonly Outcome[], weight: number): void => {
    for (const outcome of openOf(outcomes))
      hold(outcome, (unknowns) => weight * Math.max(atLeast, chanceToFail(outcome, unknowns)));
  };
  all(own, 1);
  for (const { family, outcomes } of families) all(outcomes, weightOf(family, families.length));
  for (const [outcome, weight] of failing) hold(outcome, () => weight * NEARLY_SURELY);
  return new Map([...stays].map(([answer, chance]) => [answer, 1 - chance]));
}

const NEARLY_SURELY = 0.9;

const weightOf = ({ must }: Family, families: number): number => (must || families === 1 ? 1 : NOT_A_MUST);

/** Checks of families that are open, and fail where what is not known lies where it usually does. */
function failingIn(now: Judged, usually: Judged): readonly (readonly [Outcome, number])[] {
  return now.families.flatMap(({ family, outcomes }) => {
    const fails = new Set(
      usually.families
        .filter((each) => each.family.name === family.name)
        .flatMap((each) =>
          each.outcomes.flatMap(({ verdict, check }) => (verdict === 'fails' ? [check.id] : [])),
        ),
    );
    return openOf(outcomes)
      .filter(({ check }) => fails.has(check.id))
      .map((outcome) => [outcome, weightOf(family, now.families.length)] as const);
  });
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
