import type { ShopCase } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { STAGES } from '../stages/index.ts';
import { type FamilyBits, holdsBit, mayPassWithout } from './family-bits.ts';
import type { Flats } from './flats.ts';
import { type HalfTable, halfTables } from './half-tables.ts';
import type { Half } from './open-ground.ts';
import type { PairsInWork } from './pair-tables.ts';

/**
 * The tables of the stands, stage by stage: one that cannot pass on any machine by the end of a stage is not looked at
 * again.
 */
export function standTables(
  halves: readonly Half[],
  checks: readonly Check[],
  flats: Flats,
  bits: FamilyBits,
  shop: ShopCase,
  fill: PairsInWork['fill'],
): { readonly onStands: readonly HalfTable[]; readonly lastStage: Uint8Array } {
  const { words } = bits;
  const onStands: HalfTable[] = [];
  const lastStage = new Uint8Array(halves.length).fill(STAGES.length);
  const sums = new Uint32Array(halves.length * words);
  const isOut = (stand: number): boolean => (lastStage[stand] as number) < STAGES.length;
  STAGES.forEach((stage, at) => {
    const tables = halfTables(
      halves.map((half, stand) => (isOut(stand) ? null : half)),
      checks.filter((check) => check.stage === stage),
      flats,
      bits,
      fill,
    );
    onStands.push(...tables);
    halves.forEach((_, stand) => {
      if (isOut(stand)) return;
      const sum = sums.subarray(stand * words, (stand + 1) * words);
      for (const { check, fails } of tables)
        if (check.about === 'part')
          for (let word = 0; word < words; word += 1)
            sum[word] = (sum[word] as number) | (fails[stand * words + word] as number);
      const own = tables.some(
        ({ check, fails }) => check.about === 'arrangement' && holdsBit(fails, stand * words, 0),
      );
      if (own || !mayPassWithout(bits, sum, shop.assume.leastCoverage)) lastStage[stand] = at;
    });
  });
  return { onStands, lastStage };
}
