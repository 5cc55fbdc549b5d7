import type { ClearanceAddition } from '../../catalog/catalog.ts';
import type { Case } from '../judging/case.ts';
import type { Candidate } from './candidates.ts';
import { risersFor } from './risers.ts';
import { BARE, groundOf, raisedBy, type World, withPart } from './setting.ts';
import type { InPlay } from './setting-score.ts';

/**
 * Subsets of what the machine offers, at most one of a kind, fewest and lowest first. They move the nose away from the
 * table, which on a horizontal spindle is not where it wants room: there none is tried.
 */
export function additionSets({
  machine,
}: Pick<Candidate, 'machine'>): readonly (readonly ClearanceAddition[])[] {
  const sets: ClearanceAddition[][] = [[]];
  if (machine.row.spindle === 'horizontal') return sets;
  for (const each of machine.row.clearance) {
    const without = sets.filter((set) => set.every(({ kind }) => kind !== each.kind));
    sets.push(...without.map((set) => [...set, each]));
  }
  return sets.sort((a, b) => a.length - b.length || raised(a) - raised(b));
}

const raised = (additions: readonly ClearanceAddition[]): number => raisedBy({ ...BARE, additions });

/** No plate, the adapter, and each riser that a family in play needs with these additions; thinnest first. */
export function plateChoices(
  world: World,
  candidate: Candidate,
  additions: readonly ClearanceAddition[],
  inPlay: readonly InPlay[],
): readonly number[] {
  const ground: Case = groundOf(world, candidate, { ...BARE, additions });
  const risers = inPlay.flatMap(({ family }) =>
    family.cases.flatMap((part) => risersFor(withPart(ground, part))),
  );
  return [...new Set([0, world.shop.assume.plateThickness, ...risers])].sort((a, b) => a - b);
}
