import type { Check } from '../judging/check.ts';
import { STAGES } from '../stages/index.ts';
import { holdsBit } from './family-bits.ts';
import type { PairCheck } from './pair-tables.ts';
import { inTableOrder } from './stage-sets.ts';
import type { Tables } from './tables.ts';

type Costliest = (
  stage: number,
  stand: number,
  row: number,
  pairFails: readonly Uint32Array[],
) => Check | null;

/** Where each check has its sets of failing families. */
type Source =
  | { readonly check: Check; readonly on: 'stand' | 'row'; readonly fails: Uint32Array }
  | { readonly check: Check; readonly on: 'pair'; readonly at: number };

/**
 * The check of a stage that costs most hours: one about the arrangement, or about a family that the choice must hold, costs
 * all of them. Null where none of the stage fails.
 */
export function costliestOf(tables: Tables, ranked: readonly PairCheck[]): Costliest {
  const { bits } = tables;
  const { words, musts, hours } = bits;
  const { all } = bits;
  const sources = inTableOrder<Source>([
    ...tables.onStands.map(({ check, fails }) => ({ check, on: 'stand' as const, fails })),
    ...tables.onMachines.map(({ check, fails }) => ({ check, on: 'row' as const, fails })),
    ...ranked.map(({ check }, at) => ({ check, on: 'pair' as const, at })),
  ]);
  const byStage = STAGES.map((stage) => sources.filter(({ check }) => check.stage === stage));
  const cost = (check: Check, sets: Uint32Array, from: number): number => {
    if (check.about === 'arrangement') return holdsBit(sets, from, 0) ? all : -1;
    let some = 0;
    for (let word = 0; word < words; word += 1) {
      const failing = sets[from + word] as number;
      if ((failing & (musts[word] as number)) !== 0) return all;
      some |= failing;
    }
    return some === 0 ? -1 : Math.min(all, hours(sets, 'high', from));
  };
  return (stage, stand, row, pairFails) => {
    let worst: Check | null = null;
    let most = -1;
    for (const source of byStage[stage] ?? []) {
      const costs =
        source.on === 'pair'
          ? cost(source.check, pairFails[source.at] as Uint32Array, 0)
          : cost(source.check, source.fails, (source.on === 'stand' ? stand : row) * words);
      if (costs >= 0 && costs > most + 1e-9) {
        worst = source.check;
        most = costs;
      }
    }
    return worst;
  };
}
