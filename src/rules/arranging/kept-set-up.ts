import { isStillSo } from '../judging/memo.ts';
import type { Candidate } from './candidates.ts';
import type { Family } from './family.ts';
import type { World } from './setting.ts';
import { type SetUp, setUpBest } from './setting-search.ts';

/**
 * The candidate as it is set up best, by what was found before where nothing changed that it was found from. The cases
 * of its outcomes may then be those of an earlier decision: good for verdicts, margins and unknowns, not for reasons.
 */
export function keptSetUp(world: World, candidate: Candidate, families: readonly Family[]): SetUp {
  const { reads, setUps } = world.memo;
  const signature = families
    .map(({ slot, must, hours }) => [slot, must, hours.low, hours.high].join())
    .join(';');
  const slots = families.map(({ slot }) => slot);
  const entry = setUps.get(candidate.id);
  if (entry !== undefined && entry.families === signature && isStillSo(entry, slots, reads)) {
    entry.asOf = reads.now;
    reads.part |= entry.part;
    reads.shop |= entry.shop;
    return withFamilies(entry.found, families);
  }
  const { part, shop } = reads;
  reads.part = 0;
  reads.shop = 0;
  const found = setUpBest(world, candidate, families);
  setUps.set(candidate.id, {
    found,
    families: signature,
    part: reads.part,
    shop: reads.shop,
    asOf: reads.now,
  });
  reads.part |= part;
  reads.shop |= shop;
  return found;
}

/** The same families, as this decision knows them. */
function withFamilies(setUp: SetUp, families: readonly Family[]): SetUp {
  const possible = new Set<Family>();
  const now = setUp.families.map(({ family: then, outcomes }, index) => {
    const family = families[index] ?? then;
    if (setUp.possible.has(then)) possible.add(family);
    return { family, outcomes };
  });
  return { ...setUp, families: now, possible };
}
