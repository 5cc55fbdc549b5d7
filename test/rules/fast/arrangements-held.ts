import { isDeepStrictEqual } from 'node:util';
import type { Catalog } from '../../../src/catalog/catalog.ts';
import type { Answers } from '../../../src/questions/answers.ts';
import { candidatesOf } from '../../../src/rules/arranging/candidates.ts';
import { familiesOf } from '../../../src/rules/arranging/family.ts';
import { judgedOn, marketBench } from '../../../src/rules/fast/judge-one.ts';
import { atHand } from '../../../src/rules/kept-work.ts';
import { standingOf } from '../../../src/rules/standing.ts';
import type { Judged } from '../../../src/rules/weighing/judged.ts';

/** How arrangements came out that were judged both ways, and which of them came out differently. */
export interface ArrangementsHeld {
  readonly seen: Record<Judged['passes'] | 'unsettled', number>;
  readonly differ: string[];
}

/** What of an arrangement as it was judged is held against the other way. */
const told = ({ passes, setUp, coverage, measures, families }: Judged) => ({
  passes,
  setting: setUp.setting,
  unsettled: setUp.unsettled,
  tried: setUp.tried.length,
  possible: [...setUp.possible].map(({ name }) => name),
  coverage,
  measures,
  verdicts: families.map(({ family, verdict }) => [family.name, verdict]),
});

/**
 * Every arrangement, judged as one of a market (all families at once, and no more than it takes) and as any other.
 * `plain`: these as any other, where they were judged so already.
 */
export function arrangementsHeld(
  { answers, catalog }: { readonly answers: Answers; readonly catalog: Catalog },
  held: ArrangementsHeld,
  plain: readonly Judged[] = standingOf(answers, catalog).judged,
): void {
  const { shop, world, casesOf } = atHand(answers, catalog);
  const { fiveAxis: families } = familiesOf(answers.parts, shop, casesOf);
  const bench = marketBench(world, families, answers.shop.machine);
  const judgedAs = new Map(plain.map((each) => [each.id, each]));
  for (const candidate of candidatesOf(catalog)) {
    const other = judgedAs.get(candidate.id);
    if (other === undefined) throw new Error(`${candidate.id} was not judged`);
    const found = judgedOn(bench, candidate);
    held.seen[other.passes] += 1;
    if (other.setUp.unsettled) held.seen.unsettled += 1;
    if ('drop' in found) {
      if (other.passes !== 'no')
        held.differ.push(`${candidate.id}: dropped by ${found.drop.check}, passes: ${other.passes}`);
      continue;
    }
    if (other.passes === 'no') held.differ.push(`${candidate.id}: not dropped`);
    else if (!isDeepStrictEqual(told(found.judged), told(other)))
      held.differ.push(
        `${candidate.id}: ${JSON.stringify(told(found.judged))}, not ${JSON.stringify(told(other))}`,
      );
  }
}

export const noneHeld = (): ArrangementsHeld => ({
  seen: { yes: 0, open: 0, no: 0, unsettled: 0 },
  differ: [],
});
