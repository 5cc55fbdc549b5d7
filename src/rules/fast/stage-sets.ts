import { CHECKS } from '../checks/index.ts';
import { STAGES, type StageId } from '../stages/index.ts';
import { holdsBit } from './family-bits.ts';
import type { HalfTable } from './half-tables.ts';

/** What fails on each row by the end of each stage apart, in the order of the stages. */
export interface StageSets {
  /** families, row × stages + stage */
  readonly families: Uint32Array;
  /** whether a check of the arrangement itself fails there */
  readonly own: Uint8Array;
}

const STAGE_AT: ReadonlyMap<StageId, number> = new Map(STAGES.map((stage, index) => [stage, index]));

/** Where a check stands among the stages. */
export const stageAt = (stage: StageId): number => STAGE_AT.get(stage) ?? 0;

export function stageSets(tables: readonly HalfTable[], rows: number, words: number): StageSets {
  const families = new Uint32Array(rows * STAGES.length * words);
  const own = new Uint8Array(rows * STAGES.length);
  for (const { check, fails } of tables)
    for (let row = 0; row < rows; row += 1) {
      const cell = row * STAGES.length + stageAt(check.stage);
      if (check.about === 'arrangement') {
        if (holdsBit(fails, row * words, 0)) own[cell] = 1;
        continue;
      }
      for (let word = 0; word < words; word += 1) {
        const at = cell * words + word;
        families[at] = ((families[at] ?? 0) | (fails[row * words + word] ?? 0)) >>> 0;
      }
    }
  return { families, own };
}

/** In the order in which a tie between checks is settled. */
export const inTableOrder = <Of extends { readonly check: (typeof CHECKS)[number] }>(
  all: readonly Of[],
): readonly Of[] => all.toSorted((a, b) => CHECKS.indexOf(a.check) - CHECKS.indexOf(b.check));
