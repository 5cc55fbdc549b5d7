import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import { type CaseWanted, type FoundCase, findCase } from './find-case.ts';
import type { Seeded } from './seeded.ts';
import { acrossFrom, type Probe } from './walk.ts';

/** So often another arrangement is drawn where no number moves the rule over its line. */
const DRAWS = 3;

/** A case, and answers on which the rule says the opposite; null: none are wanted, or no number is there to be moved. */
export type CaseAcross<Found extends Probe> = FoundCase<Found> & { readonly across: Answers | null };

/** The first case in which the rule decides `byItself`, or can be moved over its line; null: none was found. */
export function findAcross<Found extends Probe>(
  catalog: Catalog,
  want: CaseWanted<Found>,
  draw: Seeded,
  byItself: (probe: Found) => boolean = () => false,
): CaseAcross<Found> | null {
  const { moves } = want.recipe;
  for (let turn = 0; turn < DRAWS; turn += 1) {
    const found = findCase(catalog, want, draw);
    if (found === null) return null;
    if (moves.length === 0 || byItself(found.probe)) return { ...found, across: null };
    const { catalog: rows, on } = found;
    const across = acrossFrom(moves, found, rows, (answers) => want.probe(answers, rows, on));
    if (across !== null) return { ...found, across };
  }
  return null;
}
