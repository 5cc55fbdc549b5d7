import { isStill, noted, readAgain } from '../judging/memo.ts';
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
  const entry = setUps.get(candidate.id);
  if (entry?.families === signature && families.every(({ slot }) => isStill(entry, slot, reads)))
    return withFamilies(readAgain(entry, reads), families);
  const made = noted(reads, () => setUpBest(world, candidate, families));
  setUps.set(candidate.id, { ...made, families: signature });
  return made.found;
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
