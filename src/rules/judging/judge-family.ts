import type { Family } from '../arranging/family.ts';
import { oriented } from '../arranging/oriented.ts';
import { type World, withPart } from '../arranging/setting.ts';
import { CHECKS } from '../checks/index.ts';
import type { Verdict } from '../decision.ts';
import { acrossKinds } from './across-kinds.ts';
import type { Case, Room } from './case.ts';
import type { Check } from './check.ts';
import { keyOf, keyWith, once } from './memo.ts';
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

/** Does a check depend on this room? */
export const dependsOn = (check: Check, room: Room): boolean => ROOMS.get(check)?.includes(room) ?? false;

const dependsOnSetting = (check: Check): boolean =>
  ROOMS.get(check)?.some((room) => SETTING.has(room)) ?? false;
/** Price and swaps are known only once the setting has been chosen. */
const comesLate = (check: Check): boolean => dependsOn(check, 'price') || dependsOn(check, 'swaps');

const aboutParts = CHECKS.filter((check) => check.about === 'part');
const aboutArrangement = CHECKS.filter((check) => check.about === 'arrangement');

/** Checks of a family that no addition, plate or place changes, and those that they do. */
export const FIXED_CHECKS = aboutParts.filter((check) => !dependsOnSetting(check));
export const SETTING_CHECKS = aboutParts.filter(dependsOnSetting);
/** Of those, the ones about the stack (additions, plates), and the ones about place and turn alone. */
const aboutStack = (check: Check): boolean => dependsOn(check, 'additions') || dependsOn(check, 'plates');
export const STACK_CHECKS = SETTING_CHECKS.filter(aboutStack);
/** Of those about the stack, the ones that no place on the table changes. */
export const STACK_CHECKS_ANYWHERE = STACK_CHECKS.filter((check) => !dependsOn(check, 'place'));
export const TURN_CHECKS = SETTING_CHECKS.filter((check) => !aboutStack(check));
export const PART_CHECKS = [...FIXED_CHECKS, ...SETTING_CHECKS];
/** Checks of the arrangement itself, but for those that wait for its setting. */
export const OWN_CHECKS = aboutArrangement.filter((check) => !comesLate(check));
export const LATE_CHECKS = aboutArrangement.filter(comesLate);
/** Of its own checks, those that additions, plates or place can change. */
export const OWN_SETTING_CHECKS = OWN_CHECKS.filter(dependsOnSetting);
export const OWN_FIXED_CHECKS = OWN_CHECKS.filter((check) => !dependsOnSetting(check));

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
    check.applies(of) ? asOf(judgedOnce(world, check, of), of) : nothingNeeded(check, of);
  return checks
    .filter((check) => cases.some((of) => check.applies(of)))
    .map((check) => acrossKinds(cases, judgedBy(check), whole));
}

/** What the verdict of a family can hang on, but for the place on the table. */
const VERDICT_ROOMS: readonly Room[] = [
  'part',
  'rotary',
  'mounting',
  'machine',
  'additions',
  'plates',
  'turn',
];

/** The worst verdict of these checks on a family; stops where nothing can be worse. */
export function familyVerdict(world: World, ground: Case, family: Family, checks: readonly Check[]): Verdict {
  const atOnce = world.atOnce?.(ground, family, checks, (check) =>
    worstFor(world, ground, family, [check], 'holds'),
  );
  if (atOnce != null) return atOnce;
  const { still, placed } = apart(checks);
  const { memo } = world;
  const key = keyWith(family.slot, VERDICT_ROOMS, ground.keys);
  const worst = once(memo, memo.verdicts, still, key, family.slot, () =>
    worstFor(world, ground, family, still, 'holds'),
  );
  return worst === 'fails' ? worst : worstFor(world, ground, family, placed, worst);
}

function worstFor(
  world: World,
  ground: Case,
  family: Family,
  checks: readonly Check[],
  soFar: Verdict,
): Verdict {
  if (checks.length === 0) return soFar;
  const cases = oriented(ground).flatMap((each) => family.cases.map((part) => withPart(each, part)));
  let worst = soFar;
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

/** Those that no place changes, and the others; the same lists for the same checks. */
function apart(checks: readonly Check[]): Apart {
  const known = APART.get(checks);
  if (known !== undefined) return known;
  const hangsOnPlace = (check: Check): boolean => dependsOn(check, 'place');
  const made = {
    still: checks.filter((check) => !hangsOnPlace(check)),
    placed: checks.filter(hangsOnPlace),
  };
  APART.set(checks, made);
  return made;
}

interface Apart {
  readonly still: readonly Check[];
  readonly placed: readonly Check[];
}

const APART = new WeakMap<readonly Check[], Apart>();

/** The checks about the arrangement itself. */
export const judgeOwn = (world: World, ground: Case, checks: readonly Check[]): readonly Outcome[] =>
  checks
    .filter((check) => check.applies(ground))
    .map((check) => asOf(judgedOnce(world, check, ground), ground));

/** The worst verdict of those; stops where nothing can be worse. */
export function ownVerdict(world: World, ground: Case, checks: readonly Check[]): Verdict {
  let worst: Verdict = 'holds';
  for (const check of checks) {
    if (!check.applies(ground)) continue;
    const { advisory, verdict } = judgedOnce(world, check, ground);
    if (!advisory) worst = worse(worst, verdict);
    if (worst === 'fails') return worst;
  }
  return worst;
}

/** A check is judged once for each combination of what it is about, until something that it read changes. */
function judgedOnce({ memo }: World, check: Check, of: Case): Outcome {
  const key = keyOf(ROOMS.get(check) ?? [], of.keys);
  return once(memo, memo.outcomes, check, key, of.part?.slot ?? 0, () => judge(check, of));
}

/** What was found on the same values before, as it is found on this case: its reasons are looked up there. */
const asOf = (outcome: Outcome, of: Case): Outcome => (outcome.of === of ? outcome : { ...outcome, of });

/** The worst of them; what is open only for the seller to say enters no verdict. */
export const worstOf = (outcomes: readonly Outcome[]): Verdict =>
  outcomes.reduce<Verdict>((worst, each) => (each.advisory ? worst : worse(worst, each.verdict)), 'holds');
