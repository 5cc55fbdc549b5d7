import type { Family } from '../arranging/family.ts';
import { oriented } from '../arranging/oriented.ts';
import { type World, withPart } from '../arranging/setting.ts';
import { CHECKS } from '../checks/index.ts';
import type { Verdict } from '../decision.ts';
import { acrossKinds } from './across-kinds.ts';
import type { Case, Room } from './case.ts';
import type { Check } from './check.ts';
import { keyOf, once } from './memo.ts';
import { judge, nothingNeeded, type Outcome, worse } from './outcome.ts';
import type { Side } from './side.ts';

/** What a check depends on: all that its sides are of, and the kinds of part, rotary and machine. */
const roomsOf = (check: Check): readonly Room[] => [
  ...new Set<Room>(['part', 'rotary', 'machine', ...sidesOf(check).flatMap((side) => side.of ?? [])]),
];

/** The sides of its comparisons; none where these are made for each case. */
function sidesOf({ comparisons }: Check): readonly Side[] {
  if (typeof comparisons === 'function') return [];
  return comparisons.flatMap(({ need, have, easings }) => [
    need,
    have,
    ...(easings ?? []).flatMap(({ all, amount }) => [
      ...all.flatMap((each) => [each.need, each.have]),
      ...(amount === undefined ? [] : [amount]),
    ]),
  ]);
}

const ROOMS: ReadonlyMap<Check, readonly Room[]> = new Map(CHECKS.map((check) => [check, roomsOf(check)]));
const SETTING: ReadonlySet<Room> = new Set<Room>(['additions', 'plates', 'turn', 'place']);

const dependsOnSetting = (check: Check): boolean =>
  ROOMS.get(check)?.some((room) => SETTING.has(room)) ?? false;
/** Price and swaps are known only once the setting has been chosen. */
const comesLate = (check: Check): boolean =>
  ROOMS.get(check)?.some((room) => room === 'price' || room === 'swaps') ?? false;

const aboutParts = CHECKS.filter((check) => check.about === 'part');
const aboutArrangement = CHECKS.filter((check) => check.about === 'arrangement');

/** Checks of a family that no addition, plate or place changes, and those that they do. */
export const FIXED_CHECKS = aboutParts.filter((check) => !dependsOnSetting(check));
export const SETTING_CHECKS = aboutParts.filter(dependsOnSetting);
/** Of those, the ones about the stack (additions, plates), and the ones about place and turn alone. */
const aboutStack = (check: Check): boolean =>
  ROOMS.get(check)?.some((room) => room === 'additions' || room === 'plates') ?? false;
export const STACK_CHECKS = SETTING_CHECKS.filter(aboutStack);
export const TURN_CHECKS = SETTING_CHECKS.filter((check) => !aboutStack(check));
export const PART_CHECKS = [...FIXED_CHECKS, ...SETTING_CHECKS];
/** Checks of the arrangement itself, but for those that wait for its setting. */
export const OWN_CHECKS = aboutArrangement.filter((check) => !comesLate(check));
export const LATE_CHECKS = aboutArrangement.filter(comesLate);
/** Of its own checks, those that additions, plates or place can change. */
export const OWN_SETTING_CHECKS = OWN_CHECKS.filter(dependsOnSetting);

/**
 * The checks that apply to a family, judged on every kind that its answers leave open; with `whole` so that
 * needs and haves take in all of those kinds, as they are shown.
 */
export function judgeFamily(
  world: World,
  ground: Case,
  family: Family,
  checks: readonly Check[],
  whole = false,
): readonly Outcome[] {
  const cases = oriented(ground).flatMap((each) => family.cases.map((part) => withPart(each, part)));
  const judgedBy = (check: Check) => (of: Case) =>
    check.applies(of) ? judgedOnce(world, check, of) : nothingNeeded(check, of);
  return checks
    .filter((check) => cases.some((of) => check.applies(of)))
    .map((check) => acrossKinds(cases, judgedBy(check), whole));
}

/** The worst verdict of these checks on a family; stops where nothing can be worse. */
export function familyVerdict(world: World, ground: Case, family: Family, checks: readonly Check[]): Verdict {
  const cases = oriented(ground).flatMap((each) => family.cases.map((part) => withPart(each, part)));
  let worst: Verdict = 'holds';
  for (const check of checks) {
    if (!cases.some((of) => check.applies(of))) continue;
    const judged = (of: Case): Outcome =>
      check.applies(of) ? judgedOnce(world, check, of) : nothingNeeded(check, of);
    const { advisory, verdict } = acrossKinds(cases, judged, false);
    if (!advisory) worst = worse(worst, verdict);
    if (worst === 'fails') return worst;
  }
  return worst;
}

/** The checks about the arrangement itself. */
export const judgeOwn = (world: World, ground: Case, checks: readonly Check[]): readonly Outcome[] =>
  checks.filter((check) => check.applies(ground)).map((check) => judgedOnce(world, check, ground));

/** A check is judged once for each combination of what it is about. */
function judgedOnce({ memo }: World, check: Check, of: Case): Outcome {
  const kept = isOfShop(check) ? memo.ofShop.outcomes : memo.outcomes;
  return once(kept, check, keyOf(ROOMS.get(check) ?? [], of.keys), () => judge(check, of));
}

/** Only these read the building, the means of lifting and the money. */
const isOfShop = ({ stage }: Check): boolean => stage === 'shop';

/** What the checks of the shop compare. */
export const SHOP_SIDES: ReadonlySet<Side> = new Set(CHECKS.filter(isOfShop).flatMap(sidesOf));

/** The worst of them; what is open only for the seller to say enters no verdict. */
export const worstOf = (outcomes: readonly Outcome[]): Verdict =>
  outcomes.reduce<Verdict>((worst, each) => (each.advisory ? worst : worse(worst, each.verdict)), 'holds');
