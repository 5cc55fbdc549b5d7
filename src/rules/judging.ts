import type { Candidate } from './candidates.ts';
import type { Check } from './check.ts';
import { CHECKS } from './checks/index.ts';
import type { Verdict } from './decision.ts';
import type { Family } from './family.ts';
import { acrossKinds, judge, nothingNeeded, type Outcome, worse } from './outcome.ts';
import { caseOf, type Setting, type World } from './setting.ts';
import type { Side } from './side.ts';
import type { Value } from './value.ts';

/** What all checks say of one family on one candidate. */
export interface JudgedFamily {
  readonly family: Family;
  readonly outcomes: readonly Outcome[];
  readonly verdict: Verdict;
}

/** Does the check depend on how the candidate is set up? It says so itself, by what its sides are of. */
function dependsOnSetting(check: Check): boolean {
  if (typeof check.comparisons === 'function') return false;
  return check.comparisons.some((comparison) =>
    [
      comparison.need,
      comparison.have,
      ...(comparison.easings ?? []).flatMap((rule) => rule.all.flatMap((each) => [each.need, each.have])),
    ].some(variesWithSetting),
  );
}

const SETTING = new Set(['additions', 'plates', 'place']);
const variesWithSetting = (side: Side): boolean => side.of?.some((room) => SETTING.has(room)) ?? false;
const needsPrice = (check: Check): boolean =>
  Array.isArray(check.comparisons) && check.comparisons.some((each) => each.need.of?.includes('price'));

const aboutParts = CHECKS.filter((check) => check.about === 'part');
const aboutArrangement = CHECKS.filter((check) => check.about === 'arrangement');

/** Checks of a family that no addition, plate or place changes, and those that they do. */
export const FIXED_CHECKS = aboutParts.filter((check) => !dependsOnSetting(check));
export const SETTING_CHECKS = aboutParts.filter(dependsOnSetting);
/** Checks of the arrangement itself, but for those that wait for its price. */
export const OWN_CHECKS = aboutArrangement.filter((check) => !needsPrice(check));
export const PRICE_CHECKS = aboutArrangement.filter(needsPrice);

/** The checks that apply to a family, judged on every kind that its answers leave open. */
export function judgeFamily(
  world: World,
  candidate: Candidate,
  setting: Setting,
  family: Family,
  checks: readonly Check[],
): readonly Outcome[] {
  const cases = family.cases.map((part) => caseOf(world, candidate, setting, part));
  return checks.flatMap((check) => {
    const applying = cases.map((of) => check.applies(of));
    if (!applying.includes(true)) return [];
    return [
      acrossKinds(
        cases.map((of, index) => (applying[index] === true ? judge(check, of) : nothingNeeded(check, of))),
      ),
    ];
  });
}

/** The checks about the arrangement itself. */
export function judgeOwn(
  world: World,
  candidate: Candidate,
  setting: Setting,
  checks: readonly Check[],
  price?: Value,
): readonly Outcome[] {
  const of = caseOf(world, candidate, setting, null, price);
  return checks.filter((check) => check.applies(of)).map((check) => judge(check, of));
}

/** The worst of them; what is open only for the seller to say enters no verdict. */
export const worstOf = (outcomes: readonly Outcome[]): Verdict =>
  outcomes.reduce<Verdict>((worst, each) => (each.advisory ? worst : worse(worst, each.verdict)), 'holds');
