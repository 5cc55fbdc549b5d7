import { FIXED_CHECKS, familyVerdict, OWN_FIXED_CHECKS, ownVerdict } from '../judging/judge-family.ts';
import type { Candidate } from './candidates.ts';
import type { Family } from './family.ts';
import { BARE, groundOf, type World } from './setting.ts';

/**
 * Does a candidate fail whatever is added and wherever it stands? By its own checks, by a family that it must hold, or
 * because too few of the hours can be left. False says nothing: it may fail all the same.
 */
export function surelyFails(world: World, candidate: Candidate, families: readonly Family[]): boolean {
  const bare = groundOf(world, candidate, BARE);
  if (ownVerdict(world, bare, OWN_FIXED_CHECKS) === 'fails') return true;
  let [possible, lost] = [0, 0];
  for (const family of families) {
    if (familyVerdict(world, bare, family, FIXED_CHECKS) !== 'fails') possible += family.hours.high;
    else if (family.must) return true;
    else lost += family.hours.low;
  }
  return possible <= 0 || possible / (possible + lost) < world.shop.assume.leastCoverage - 1e-9;
}
