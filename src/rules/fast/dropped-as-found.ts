import { groundOf, type World } from '../arranging/setting.ts';
import type { InPlay } from '../arranging/setting-score.ts';
import { canPass, type Searched } from '../arranging/setting-search.ts';
import { CHECKS } from '../checks/index.ts';
import type { Drop } from '../decision.ts';
import { featureOf } from '../features/ordered.ts';
import type { Case } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import {
  dependsOn,
  familyVerdict,
  judgeFamily,
  LATE_CHECKS,
  PART_CHECKS,
  SETTING_CHECKS,
} from '../judging/judge-family.ts';
import { judge } from '../judging/outcome.ts';
import { derived } from '../judging/value.ts';
import { capitalOf } from '../money/worth.ts';
import { STAGES } from '../stages/index.ts';
import { priceOf } from '../weighing/price.ts';

/** Checks of the arrangement that take its price. */
const ON_PRICE = LATE_CHECKS.filter((check) => dependsOn(check, 'price'));

/** Checks that may hold with something that is bought. */
const BUYING = PART_CHECKS.filter(
  ({ comparisons }) =>
    typeof comparisons !== 'function' &&
    comparisons.some(({ easings = [] }) =>
      easings.some(({ measure }) => measure === 'tailstock' || featureOf(measure) !== undefined),
    ),
);

/** By stage its checks of families, each as a list. */
const ONE_BY_ONE = STAGES.map((stage) =>
  CHECKS.filter(({ about, stage: of }) => about === 'part' && of === stage).map((check): readonly [Check] => [
    check,
  ]),
);

/**
 * Where an arrangement drops that cannot pass as it was found to be set up best: by the families that fail there, or by what it
 * costs at the least. Null: as far as this shows, it may pass. Most of a market that is judged in vain drops here, and
 * all other checks need not be looked at.
 */
export function droppedAsFound(
  world: World,
  found: Searched,
  fixed: readonly InPlay[],
  owned: string,
): Drop | null {
  const { candidate, setting, unsettled, possible } = found;
  const ground = groundOf(world, candidate, setting);
  const covered = fixed.filter(
    ({ family, fixed: verdict }) =>
      verdict !== 'fails' && familyVerdict(world, ground, family, SETTING_CHECKS) !== 'fails',
  );
  // while something is open, these may hold in another setting
  const mayHold = unsettled
    ? fixed.filter((each) => covered.includes(each) || possible.has(each.family))
    : covered;
  if (!canPass(fixed, mayHold, world.shop.assume.leastCoverage)) {
    const drop = byFamilies(world, ground, fixed, new Set(mayHold));
    if (drop !== null) return drop;
  }
  return byPrice(world, ground, found, covered, owned);
}

/** At the first stage after which too little is left, the check that costs most hours. */
function byFamilies(
  world: World,
  ground: Case,
  fixed: readonly InPlay[],
  mayHold: ReadonlySet<InPlay>,
): Drop | null {
  const gone = new Set<InPlay>();
  for (const [index, stage] of STAGES.entries()) {
    let worst: { readonly check: Check; readonly hours: number } | null = null;
    for (const checks of ONE_BY_ONE[index] ?? []) {
      const failing = fixed.filter(
        (each) => !mayHold.has(each) && familyVerdict(world, ground, each.family, checks) === 'fails',
      );
      for (const each of failing) gone.add(each);
      const hours = failing.reduce(
        (sum, { family }) => sum + (family.must ? Number.POSITIVE_INFINITY : family.hours.high),
        0,
      );
      if (hours > (worst?.hours ?? 0)) worst = { check: checks[0], hours };
    }
    const left = fixed.filter((each) => !gone.has(each));
    if (worst !== null && !canPass(fixed, left, world.shop.assume.leastCoverage))
      return { stage, check: worst.check.id };
  }
  return null;
}

/** The price is the plain judge's, without what its supply takes, so it is never more than his. */
function byPrice(
  world: World,
  ground: Case,
  found: Searched,
  covered: readonly InPlay[],
  owned: string,
): Drop | null {
  const { shop } = world;
  const outcomes = covered.flatMap(({ family }) => judgeFamily(world, ground, family, BUYING));
  const { total } = priceOf({ ...found, own: [] }, outcomes, owned, shop.platePrice);
  const { low } = capitalOf(total, shop.money);
  const least = derived({ low, high: Number.POSITIVE_INFINITY }, 'price', []);
  const priced = groundOf(world, found.candidate, found.setting, least);
  const over = ON_PRICE.find((check) => check.applies(priced) && judge(check, priced).verdict === 'fails');
  return over === undefined ? null : { stage: over.stage, check: over.id };
}
