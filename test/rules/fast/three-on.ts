import { holdsBit } from '../../../src/rules/fast/family-bits.ts';
import type { HalfTable } from '../../../src/rules/fast/half-tables.ts';
import { havesOn } from '../../../src/rules/fast/have-rows.ts';
import { openGround } from '../../../src/rules/fast/open-ground.ts';
import { pairLookup, type Wanted } from '../../../src/rules/fast/pair-sets.ts';
import { stageAt } from '../../../src/rules/fast/stage-sets.ts';
import { kindOf, machineHalf, pairAt, STAND_KINDS, type Tables } from '../../../src/rules/fast/tables.ts';
import type { Three } from '../../../src/rules/fast/verdict-of.ts';
import type { Check } from '../../../src/rules/judging/check.ts';

/**
 * What the tables say of a check on a machine with a stand, for the family of this number (0 where it is about the
 * arrangement itself); null: they do not say, or of a ranked check that is not whole only that it does not surely fail.
 */
export function threeOn(
  tables: Tables,
  machine: number,
  stand: number,
  check: Check,
  family: number,
): Three | null {
  const { machine: on, stand: under } = pairAt(tables, { machine, stand });
  const { words } = tables.bits;
  const row = machine * STAND_KINDS.length + kindOf(under);
  const half = (all: readonly HalfTable[], at: number): Three | null => {
    const table = all.find((each) => each.check === check);
    if (table === undefined) return null;
    return inSets(holdsBit(table.fails, at * words, family), holdsBit(table.notSettled, at * words, family));
  };
  const apart = half(tables.onStands, stand) ?? half(tables.onMachines, row);
  if (apart !== null) return apart;
  const pair = tables.pairs.find((each) => each.check === check);
  if (pair === undefined) return null;
  const haves = new Float64Array(tables.haves.sides.length * 2);
  havesOn(tables.haves.sides, tables.shop)(
    openGround({ ...machineHalf(on, under.rotary, tables.shop), stand: under }),
    haves,
    0,
  );
  const has = (wanted: Wanted): boolean =>
    holdsBit(pairLookup(words, wanted)(pair, stand, haves, 0), 0, family);
  const failing = has('fails');
  if (!pair.whole && !failing) return null;
  return inSets(failing, !failing && has('does not pass'));
}

/** A stand that fails on any machine was not looked at in later stages. */
export const isLookedAt = (tables: Tables, stand: number, check: Check): boolean =>
  stageAt(check.stage) <= (tables.lastStage[stand] as number);

const inSets = (fails: boolean, notSettled: boolean): Three =>
  fails ? 'fails' : notSettled ? 'not settled' : 'passes';
