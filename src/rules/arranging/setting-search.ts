import type { Case } from '../judging/case.ts';
import {
  FIXED_CHECKS,
  familyVerdict,
  judgeFamily,
  judgeOwn,
  OWN_CHECKS,
  PART_CHECKS,
  SETTING_CHECKS,
  STACK_CHECKS,
  STACK_CHECKS_ANYWHERE,
  TURN_CHECKS,
} from '../judging/judge-family.ts';
import { type Outcome, passes, worse } from '../judging/outcome.ts';
import { additionSets, plateChoices } from './additions.ts';
import { anyStack } from './any-stack.ts';
import type { Candidate } from './candidates.ts';
import type { Family } from './family.ts';
import { bestRange, nearestTo, placesInReach, placesOnTable, type Range } from './place.ts';
import { BARE, groundOf, type Setting, type World, withPart } from './setting.ts';
import { asGoodUpToVises, best, type InPlay, type Score, scoreOf } from './setting-score.ts';

/** A candidate as it is set up best, with everything that was found on the way. */
export interface SetUp {
  readonly candidate: Candidate;
  readonly setting: Setting;
  readonly slack: { readonly x: number; readonly y: number };
  readonly own: readonly Outcome[];
  readonly families: readonly { readonly family: Family; readonly outcomes: readonly Outcome[] }[];
  /** every addition and plate that was tried, with the hours that surely hold */
  readonly tried: readonly Score[];
  /** something in play is open, so that once it is known another setting may turn out to be the best */
  readonly unsettled: boolean;
  /** other settings that may turn out to be the best, as soon as the size of a vise is known */
  readonly byVises: readonly Setting[];
  /** the families that may hold with some setting or other */
  readonly possible: ReadonlySet<Family>;
}

/**
 * Chooses place, additions and plates: most hours that surely hold, then fewest additions, thinnest plates,
 * most vise stations, nearest the middle of the table. Families that fail whatever is done are left out.
 */
export const setUpBest = (world: World, candidate: Candidate, families: readonly Family[]): SetUp =>
  setUpAs(world, searchBest(world, candidate, fixedVerdicts(world, candidate, families)), families);

/** The families with the verdicts that hold whatever the setting is. */
export function fixedVerdicts(
  world: World,
  candidate: Candidate,
  families: readonly Family[],
): readonly InPlay[] {
  const bare = groundOf(world, candidate, BARE);
  return families.map((family) => ({ family, fixed: familyVerdict(world, bare, family, FIXED_CHECKS) }));
}

/** The best setting, before all of it is judged. */
export type Searched = Omit<SetUp, 'own' | 'families'>;

/** Looks for the best setting. `judged`: every family, with the verdict that no setting changes. */
export function searchBest(world: World, candidate: Candidate, judged: readonly InPlay[]): Searched {
  const inPlay = judged.filter(({ fixed }) => fixed !== 'fails');
  const { tried, possible } = candidate.machine.builtIn
    ? onItsOwnTable(world, groundOf(world, candidate, BARE), inPlay)
    : search(world, candidate, judged, inPlay);
  const chosen = best(tried);
  return {
    candidate,
    setting: chosen.setting,
    slack: chosen.slack,
    tried,
    byVises: asGoodUpToVises(chosen, tried).map((each) => each.setting),
    unsettled: tried.some(isUnsettled),
    possible,
  };
}

/** All checks but the late ones, on the setting that was found. */
export function setUpAs(world: World, found: Searched, families: readonly Family[]): SetUp {
  const ground = groundOf(world, found.candidate, found.setting);
  return {
    ...found,
    own: judgeOwn(world, ground, OWN_CHECKS),
    families: families.map((family) => ({
      family,
      outcomes: judgeFamily(world, ground, family, PART_CHECKS),
    })),
  };
}

const isUnsettled = ({ unsure, ownPasses }: Score): boolean => unsure || ownPasses === 1;

interface Search {
  readonly tried: readonly [Score, ...Score[]];
  readonly possible: ReadonlySet<Family>;
}

/** A built-in table stands where it stands. */
function onItsOwnTable(world: World, ground: Case, inPlay: readonly InPlay[]): Search {
  const score = scoreOf(world, ground, BARE, { x: 0, y: 0 }, inPlay, SETTING_CHECKS);
  return {
    tried: [score],
    possible: new Set(
      inPlay
        .map(({ family }) => family)
        .filter((family) => familyVerdict(world, ground, family, SETTING_CHECKS) !== 'fails'),
    ),
  };
}

/** One way round on the table: where it can stand, and the families that it reaches there. */
interface Stand {
  readonly turned: boolean;
  readonly x: Range;
  readonly y: Range;
  readonly slack: Score['slack'];
  /** with the verdict that holds whatever is put under it, there included */
  readonly reached: readonly InPlay[];
}

/**
 * Additions and plates do not change where the rotary can stand, nor whether it is turned what it reaches
 * level (of an upright axis, see `standOf`); so first the two ways round, then additions and plates from little to much in the middle of the
 * table, until nothing more can be won, and last the places on the table with what was best.
 */
function search(
  world: World,
  candidate: Candidate,
  judged: readonly InPlay[],
  inPlay: readonly InPlay[],
): Search {
  const ways = standsUpright(candidate) ? [false] : [false, true];
  const stands = ways.map((turned) => standOf(world, candidate, inPlay, turned));
  const worthwhile = stands.some(({ reached }) => canPass(judged, reached, world.shop.assume.leastCoverage));
  const most = Math.max(
    ...stands.map(({ reached }) => hoursOf(reached.filter(({ fixed }) => passes(fixed)))),
  );
  const mostOpen = Math.max(...stands.map(({ reached }) => hoursOf(reached)));
  const winsAll = ({ ownPasses, sureHours, openHours }: Score): boolean =>
    ownPasses === 2 && sureHours >= most - 1e-9 && openHours >= mostOpen - 1e-9;
  const tried: Score[] = [];
  const inTheMiddle = (given: Pick<Setting, 'additions' | 'plates'>): readonly Score[] =>
    (worthwhile ? stands : stands.slice(0, 1)).map((stand) =>
      placed(world, candidate, stand, given, nearestTo(0, stand.x)),
    );
  stacks: for (const additions of worthwhile ? additionSets(candidate) : [[]]) {
    for (const plates of plateChoices(world, candidate, additions, worthwhile ? inPlay : [])) {
      tried.push(...inTheMiddle({ additions, plates }));
      if (tried.some(winsAll)) break stacks;
    }
  }
  const [first, ...rest] = tried;
  if (first === undefined) throw new Error('nothing was tried');
  const stack = best([first, ...rest]).setting;
  const toTheEnds = worthwhile
    ? stands.flatMap((stand) =>
        [stand.x.from, stand.x.to]
          .filter(Number.isFinite)
          .map((x) => placed(world, candidate, stand, stack, x)),
      )
    : [];
  const all: Search['tried'] = [first, ...rest, ...toTheEnds];
  const possible = stands.flatMap((stand) =>
    worthwhile && all.some(isUnsettled) ? onSomeStack(world, candidate, stand) : stand.reached,
  );
  return { tried: all, possible: new Set(possible.map(({ family }) => family)) };
}

/** Which of those that are reached do not fail with all additions and plates that there are. */
function onSomeStack(world: World, candidate: Candidate, { turned, reached }: Stand): readonly InPlay[] {
  const ground = anyStack(groundOf(world, candidate, { ...BARE, place: { ...BARE.place, turned } }));
  return reached.filter(
    ({ family }) => familyVerdict(world, ground, family, STACK_CHECKS_ANYWHERE) !== 'fails',
  );
}

const standsUpright = ({ rotary: { axes, gravity } }: Candidate): boolean =>
  axes === 1 && gravity === 'along';

/** Upright, plates lift the work to the spindle: then what may be reached on some plate, to be judged on each. */
function standOf(world: World, candidate: Candidate, inPlay: readonly InPlay[], turned: boolean): Stand {
  const ground = groundOf(world, candidate, { ...BARE, place: { x: 0, y: 0, turned } });
  const [x, y] = [rangeOn(ground, inPlay, 'x'), rangeOn(ground, inPlay, 'y')];
  const place = { x: nearestTo(0, x), y: nearestTo(0, y), turned };
  const plates = standsUpright(candidate) ? plateChoices(world, candidate, [], inPlay) : [0];
  const there = plates.map((each) => groundOf(world, candidate, { ...BARE, plates: each, place }));
  return {
    turned,
    x,
    y,
    slack: { x: widthOf(x), y: widthOf(y) },
    reached: inPlay.flatMap((each) => {
      const verdicts = there.map((at) => familyVerdict(world, at, each.family, TURN_CHECKS));
      if (verdicts.every((verdict) => verdict === 'fails')) return [];
      // upright, each plate is judged on these checks again
      const onTurn = standsUpright(candidate) ? 'holds' : (verdicts[0] ?? 'holds');
      return [{ ...each, fixed: worse(each.fixed, onTurn) }];
    }),
  };
}

/** The stack judged on one place; what depends on the place was judged when the stand was looked for. */
function placed(
  world: World,
  candidate: Candidate,
  { reached, y, turned, slack }: Stand,
  { additions, plates }: Pick<Setting, 'additions' | 'plates'>,
  x: number,
): Score {
  const setting: Setting = { additions, plates, place: { x, y: nearestTo(0, y), turned } };
  const checks = standsUpright(candidate) ? SETTING_CHECKS : STACK_CHECKS;
  return scoreOf(world, groundOf(world, candidate, setting), setting, slack, reached, checks);
}

/** Can the arrangement pass with these families? If not, what is added need not be looked for. */
export function canPass(all: readonly InPlay[], reached: readonly InPlay[], leastCoverage: number): boolean {
  const families = new Set(reached.map(({ family }) => family));
  if (all.some(({ family }) => family.must && !families.has(family))) return false;
  const possible = reached.reduce((sum, { family }) => sum + family.hours.high, 0);
  const lost = all.reduce((sum, { family }) => sum + (families.has(family) ? 0 : family.hours.low), 0);
  return possible > 0 && possible / (possible + lost) >= leastCoverage - 1e-9;
}

const hoursOf = (inPlay: readonly InPlay[]): number =>
  inPlay.reduce((sum, { family }) => sum + family.hours.low, 0);
const widthOf = ({ from, to }: Range): number => Math.max(0, to - from);

/** A family that the choice must hold outweighs every other. */
const MUST = 1e6;

function rangeOn(ground: Case, inPlay: readonly InPlay[], axis: 'x' | 'y'): Range {
  const table = placesOnTable(ground, axis);
  const wishes = inPlay.map(({ family }) => ({
    range: placesInReach(
      family.cases.map((part) => withPart(ground, part)),
      axis,
      table,
    ),
    weight: (family.must ? MUST : 1) * family.hours.low,
  }));
  return bestRange(table, wishes).range;
}
