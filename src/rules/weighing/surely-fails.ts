import type { Candidate } from '../arranging/candidates.ts';
import type { Family } from '../arranging/family.ts';
import { BARE, groundOf, type World } from '../arranging/setting.ts';
import type { Verdict } from '../decision.ts';
import { FIXED_CHECKS, familyVerdict, OWN_FIXED_CHECKS, ownVerdict } from '../judging/judge-family.ts';
import { coverageOf } from './coverage.ts';
import { coversTooLittle } from './judged.ts';

/**
 * Does a candidate fail whatever is added and wherever it stands? By its own checks, by a family that it must hold, or
 * because too few of the hours can be left. False says nothing: it may fail all the same.
 */
export function surelyFails(world: World, candidate: Candidate, families: readonly Family[]): boolean {
  const bare = groundOf(world, candidate, BARE);
  if (ownVerdict(world, bare, OWN_FIXED_CHECKS) === 'fails') return true;
  const verdicts: { family: Family; verdict: Verdict }[] = [];
  for (const family of families) {
    const verdict = familyVerdict(world, bare, family, FIXED_CHECKS);
    if (verdict === 'fails' && family.must) return true;
    verdicts.push({ family, verdict });
  }
  return coversTooLittle(coverageOf(verdicts), world.shop.assume.leastCoverage);
}
