import type { Candidate } from '../arranging/candidates.ts';
import type { Family } from '../arranging/family.ts';
import { type AtOnce, BARE, groundOf, type World } from '../arranging/setting.ts';
import type { InPlay } from '../arranging/setting-score.ts';
import { canPass, fixedVerdicts, searchBest, setUpAs, setUpBest } from '../arranging/setting-search.ts';
import type { Drop } from '../decision.ts';
import type { ShopCase } from '../judging/case.ts';
import {
  FIXED_CHECKS,
  judgeFamily,
  judgeOwn,
  OWN_FIXED_CHECKS,
  ownVerdict,
} from '../judging/judge-family.ts';
import { freshMemo, type Memo } from '../judging/memo.ts';
import { dropOf } from '../stages/drop.ts';
import { type Judged, judgeSetUp } from '../weighing/judged.ts';
import { droppedAsFound } from './dropped-as-found.ts';
import { flatVerdicts } from './flat-verdicts.ts';

/** What judges a market: the mix and the shop, and whose machine stands there. */
export interface Bench {
  readonly shop: ShopCase;
  readonly families: readonly Family[];
  readonly owned: string;
  /** what the answers' reads are noted in; nothing else of it is used */
  readonly memo: Memo;
  /** judges all families at once; made for a whole market */
  readonly atOnce?: AtOnce;
}

/** The bench of a whole market: its families are judged at once. */
export const marketBench = (
  { shop, memo }: Pick<World, 'shop' | 'memo'>,
  families: readonly Family[],
  owned: string,
): Bench => ({ shop, families, owned, memo, atOnce: flatVerdicts(families, shop) });

/** What is worked out for one arrangement of a market is of no use for the next: nothing of it is kept. */
const freshWorld = ({ shop, memo, atOnce }: Bench): World => ({
  shop,
  memo: { ...freshMemo(), reads: memo.reads },
  ...(atOnce === undefined ? {} : { atOnce }),
});

/** What becomes of an arrangement: where it drops, or all of it, as the plain judge has it. */
export function judgedOn(
  bench: Bench,
  candidate: Candidate,
): { readonly drop: Drop } | { readonly judged: Judged } {
  const world = freshWorld(bench);
  const fixed = fixedVerdicts(world, candidate, bench.families);
  const early = mayPassFixed(world, candidate, fixed) ? null : droppedEarly(world, bench.families, candidate);
  if (early !== null) return { drop: early };
  const found = searchBest(world, candidate, fixed);
  const drop = droppedAsFound(world, found, fixed, bench.owned);
  if (drop !== null) return { drop };
  const judged = judgeSetUp(world, setUpAs(world, found, bench.families), bench.owned);
  const late = dropOf(judged, bench.shop.assume.leastCoverage);
  return late === null ? { judged } : { drop: late };
}

/** In full, for whoever reads it. */
export const judgedInFull = (bench: Bench, candidate: Candidate): Judged =>
  inFull(freshWorld(bench), bench, candidate);

const inFull = (world: World, { families, owned }: Bench, candidate: Candidate): Judged =>
  judgeSetUp(world, setUpBest(world, candidate, families), owned);

function mayPassFixed(world: World, candidate: Candidate, fixed: readonly InPlay[]): boolean {
  if (ownVerdict(world, groundOf(world, candidate, BARE), OWN_FIXED_CHECKS) === 'fails') return false;
  const inPlay = fixed.filter((each) => each.fixed !== 'fails');
  return canPass(fixed, inPlay, world.shop.assume.leastCoverage);
}

/** By what no setting changes. */
function droppedEarly(world: World, families: readonly Family[], candidate: Candidate): Drop | null {
  const bare = groundOf(world, candidate, BARE);
  return dropOf(
    {
      passes: 'no',
      own: judgeOwn(world, bare, OWN_FIXED_CHECKS),
      families: families.map((family) => ({
        family,
        outcomes: judgeFamily(world, bare, family, FIXED_CHECKS),
      })),
    },
    world.shop.assume.leastCoverage,
  );
}
