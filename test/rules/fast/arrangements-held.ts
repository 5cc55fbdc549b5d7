import { isDeepStrictEqual } from 'node:util';
import type { Catalog } from '../../../src/catalog/catalog.ts';
import type { Answers } from '../../../src/questions/answers.ts';
import { candidatesOf } from '../../../src/rules/arranging/candidates.ts';
import { familiesOf } from '../../../src/rules/arranging/family.ts';
import { flatVerdicts } from '../../../src/rules/fast/flat-verdicts.ts';
import { judgedInFull, judgedOn } from '../../../src/rules/fast/judge-one.ts';
import { atHand } from '../../../src/rules/kept-work.ts';
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

/** Every arrangement, judged as one of a market (all families at once, and no more than it takes) and as any other. */
export function arrangementsHeld(
  { answers, catalog }: { readonly answers: Answers; readonly catalog: Catalog },
  held: ArrangementsHeld,
): void {
  const { shop, world, casesOf } = atHand(answers, catalog);
  const { fiveAxis: families } = familiesOf(answers.parts, shop, casesOf);
  const bench = { shop, families, owned: answers.shop.machine, memo: world.memo };
  const atOnce = flatVerdicts(families, shop);
  for (const candidate of candidatesOf(catalog)) {
    const plain = judgedInFull(bench, candidate);
    const found = judgedOn({ ...bench, atOnce }, candidate);
    held.seen[plain.passes] += 1;
    if (plain.setUp.unsettled) held.seen.unsettled += 1;
    if ('drop' in found) {
      if (plain.passes !== 'no')
        held.differ.push(`${candidate.id}: dropped by ${found.drop.check}, passes: ${plain.passes}`);
      continue;
    }
    if (plain.passes === 'no') held.differ.push(`${candidate.id}: not dropped`);
    else if (!isDeepStrictEqual(told(found.judged), told(plain)))
      held.differ.push(
        `${candidate.id}: ${JSON.stringify(told(found.judged))}, not ${JSON.stringify(told(plain))}`,
      );
  }
}

export const noneHeld = (): ArrangementsHeld => ({
  seen: { yes: 0, open: 0, no: 0, unsettled: 0 },
  differ: [],
});
