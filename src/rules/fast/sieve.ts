import type { Interval } from '../../quantities/interval.ts';
import type { Check } from '../judging/check.ts';
import { STAGES } from '../stages/index.ts';
import { costliestOf } from './costliest.ts';
import { mayPassWithout } from './family-bits.ts';
import { openGround } from './open-ground.ts';
import { pairLookup } from './pair-sets.ts';
import { haveOn, isOfMachine } from './pair-tables.ts';
import { stageAt, stageSets } from './stage-sets.ts';
import { kindOf, machineHalf, STAND_KINDS, type Tables } from './tables.ts';

/** What the sieve says of a machine with a stand on it. */
interface Sifted {
  /** the check that it cannot pass, whatever it is set up with; null: it may pass */
  readonly drop: Check | null;
  /** the families that fail in every setting; good until the next pair is looked at */
  readonly fails: Uint32Array;
}

/** Looks at one pair after the other; all stands of a machine in a row are cheapest. */
export type Sieve = (machine: number, stand: number) => Sifted;

/**
 * Which arrangements fail whatever is added and wherever they stand, by the tables alone. One that it lets through may fail
 * all the same: it is judged by the plain judge. One that it drops is charged to the first stage after which it can no
 * longer pass, and there to the check that costs most hours.
 */
export function sieveOf(tables: Tables): Sieve {
  const { bits, stands, machines, pairs } = tables;
  const { words } = bits;
  const onStands = stageSets(tables.onStands, stands.length, words);
  const onMachines = stageSets(tables.onMachines, machines.length * STAND_KINDS.length, words);
  const ranked = pairs.filter(({ ofMachine }) => ofMachine);
  const pairFails = ranked.map(() => new Uint32Array(words));
  const byStage = STAGES.map((_, stage) =>
    ranked.flatMap((pair, at) =>
      stageAt(pair.check.stage) === stage ? [{ pair, kept: pairFails[at] as Uint32Array }] : [],
    ),
  );
  const lookup = pairLookup(words, 'fails');
  const sum = new Uint32Array(words);
  const haves = havesBy(tables);
  const costliest = costliestOf(tables, ranked);
  const least = tables.shop.assume.leastCoverage;

  return (machine, stand) => {
    const row = machine * STAND_KINDS.length + kindOf(stands[stand] as Tables['stands'][number]);
    const there = haves(row);
    sum.fill(0);
    for (let stage = 0; stage < STAGES.length; stage += 1) {
      const standCell = stand * STAGES.length + stage;
      const rowCell = row * STAGES.length + stage;
      for (let word = 0; word < words; word += 1)
        sum[word] =
          (sum[word] as number) |
          (onStands.families[standCell * words + word] as number) |
          (onMachines.families[rowCell * words + word] as number);
      for (const { pair, kept } of byStage[stage] ?? []) {
        kept.set(lookup(pair, stand, there));
        for (let word = 0; word < words; word += 1)
          sum[word] = (sum[word] as number) | (kept[word] as number);
      }
      const ownFails = onStands.own[standCell] === 1 || onMachines.own[rowCell] === 1;
      if (ownFails || !mayPassWithout(bits, sum, least)) {
        const drop = costliest(stage, stand, row, pairFails);
        if (drop !== null) return { drop, fails: sum };
      }
    }
    return { drop: null, fails: sum };
  };
}

/** What each have comes to on a machine with a kind of stand; of the machine in hand they are kept. */
function havesBy({ haves, machines, shop, pairs }: Tables): (row: number) => readonly Interval[] {
  const none = !pairs.some(({ ofMachine }) => ofMachine);
  let inHand = -1;
  let kept: (readonly Interval[] | undefined)[] = [];
  return (row) => {
    if (none) return [];
    const at = Math.floor(row / STAND_KINDS.length);
    const ofKind = row % STAND_KINDS.length;
    if (at !== inHand) kept = [];
    inHand = at;
    const known = kept[ofKind];
    if (known !== undefined) return known;
    const [machine, kind] = [machines[at], STAND_KINDS[ofKind]];
    if (machine === undefined || kind === undefined) throw new Error(`no row ${row}`);
    const ground = openGround(machineHalf(machine, kind, shop));
    const found = haves.sides.map((side) => (isOfMachine(side) ? haveOn(side, ground) : UNBOUNDED));
    kept[ofKind] = found;
    return found;
  };
}

const UNBOUNDED: Interval = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
