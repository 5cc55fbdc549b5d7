import type { Candidate } from '../arranging/candidates.ts';
import type { Family } from '../arranging/family.ts';
import { BARE, groundOf, type World } from '../arranging/setting.ts';
import { setUpBest } from '../arranging/setting-search.ts';
import type { Drop } from '../decision.ts';
import type { ShopCase } from '../judging/case.ts';
import { FIXED_CHECKS, judgeFamily, judgeOwn, OWN_FIXED_CHECKS } from '../judging/judge-family.ts';
import { freshMemo, type Memo } from '../judging/memo.ts';
import { dropOf } from '../stages/drop.ts';
import { type Judged, judgeSetUp } from '../weighing/judged.ts';

/** What judges a market: the mix and the shop, and whose machine stands there. */
export interface Bench {
  readonly shop: ShopCase;
  readonly families: readonly Family[];
  readonly owned: string;
  /** what the answers' reads are noted in; nothing else of it is used */
  readonly memo: Memo;
}

/** What is worked out for one arrangement of a market is of no use for the next: nothing of it is kept. */
const freshWorld = ({ shop, memo }: Bench): World => ({ shop, memo: { ...freshMemo(), reads: memo.reads } });

/** What the plain judge says of an arrangement: where it drops, or all of it. */
export function judgedOn(
  bench: Bench,
  candidate: Candidate,
): { readonly drop: Drop } | { readonly judged: Judged } {
  const world = freshWorld(bench);
  const early = droppedEarly(world, bench.families, candidate);
  if (early !== null) return { drop: early };
  const judged = inFull(world, bench, candidate);
  const late = dropOf(judged, bench.shop.assume.leastCoverage);
  return late === null ? { judged } : { drop: late };
}

/** In full, for whoever reads it. */
export const judgedInFull = (bench: Bench, candidate: Candidate): Judged =>
  inFull(freshWorld(bench), bench, candidate);

const inFull = (world: World, { families, owned }: Bench, candidate: Candidate): Judged =>
  judgeSetUp(world, setUpBest(world, candidate, families), owned);

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
