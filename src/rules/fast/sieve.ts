import { isUnder } from '../arranging/candidates.ts';
import type { Check } from '../judging/check.ts';
import { STAGES } from '../stages/index.ts';
import { costliestOf } from './costliest.ts';
import { mayPassWithout } from './family-bits.ts';
import { havesOn } from './have-rows.ts';
import { openGround } from './open-ground.ts';
import { pairLookup } from './pair-sets.ts';
import { isOfMachine } from './pair-tables.ts';
import { stageAt, stageSets } from './stage-sets.ts';
import { kindOf, machineHalf, STAND_KINDS, type Tables } from './tables.ts';

/** What the sieve says of a machine with a stand on it. */
interface Sifted {
  /** the check that it cannot pass, whatever it is set up with; null: it may pass */
  readonly drop: Check | null;
  /** the families that fail in every setting; good until the next pair is looked at */
  readonly fails: Uint32Array;
}

export interface Sieve {
  /** all machines of a stand in a row are cheapest */
  readonly on: (machine: number, stand: number) => Sifted;
  /** what it says of this stand on any machine; null: that hangs on the machine */
  readonly anyMachine: (stand: number) => Sifted | null;
}

/**
 * Which arrangements fail whatever is added and wherever they stand, by the tables alone. One that it lets through may fail
 * all the same: it is judged by the plain judge. One that it drops is charged to the first stage after which it can no
 * longer pass, and there to the check that costs most hours.
 */
export function sieveOf(tables: Tables): Sieve {
  const { bits, stands, machines, pairs, lastStage } = tables;
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
  // before this stage only the stand counts
  const joint = Math.min(...[...tables.onMachines, ...ranked].map(({ check }) => stageAt(check.stage)));
  const lookup = pairLookup(words, 'fails');
  const sum = new Uint32Array(words);
  const haves = machineHaves(tables);
  const width = tables.haves.sides.length * 2;
  const costliest = costliestOf(tables, ranked);
  const least = tables.shop.assume.leastCoverage;

  /** Adds these to the sum. True: something is new. */
  const add = (sets: Uint32Array, from: number): boolean => {
    let isNew = false;
    for (let word = 0; word < words; word += 1) {
      const before = sum[word] as number;
      const after = (before | (sets[from + word] as number)) >>> 0;
      sum[word] = after;
      if (after !== before) isNew = true;
    }
    return isNew;
  };

  const anyMachine = (stand: number): Sifted | null => {
    const last = lastStage[stand] as number;
    if (last >= joint) return null;
    sum.fill(0);
    for (let stage = 0; stage <= last; stage += 1)
      add(onStands.families, (stand * STAGES.length + stage) * words);
    return { drop: costliest(last, stand, 0, pairFails), fails: sum };
  };

  return {
    anyMachine,
    on: (machine, stand) => {
      const known = anyMachine(stand);
      if (known !== null) return known;
      const row = machine * STAND_KINDS.length + kindOf(stands[stand] as Tables['stands'][number]);
      sum.fill(0);
      for (let stage = 0; stage < STAGES.length; stage += 1) {
        const standCell = stand * STAGES.length + stage;
        const rowCell = row * STAGES.length + stage;
        const ofStand = add(onStands.families, standCell * words);
        if (stage < joint) continue;
        let isNew = add(onMachines.families, rowCell * words) || ofStand || stage === joint;
        for (const { pair, kept } of byStage[stage] ?? []) {
          kept.set(lookup(pair, stand, haves, row * width));
          if (add(kept, 0)) isNew = true;
        }
        const ownFails = onStands.own[standCell] === 1 || onMachines.own[rowCell] === 1;
        if (ownFails || (isNew && !mayPassWithout(bits, sum, least))) {
          const drop = costliest(stage, stand, row, pairFails);
          if (drop !== null) return { drop, fails: sum };
        }
      }
      return { drop: null, fails: sum };
    },
  };
}

/** What each have that takes the machine alone comes to on every machine with every kind of stand, row after row. */
function machineHaves({ haves: { sides }, machines, shop, pairs }: Tables): Float64Array {
  const width = sides.length * 2;
  const rows = new Float64Array(machines.length * STAND_KINDS.length * width);
  if (!pairs.some(({ ofMachine }) => ofMachine)) return rows;
  const put = havesOn(sides, shop, isOfMachine);
  machines.forEach((machine, at) => {
    STAND_KINDS.forEach((kind, ofKind) => {
      if (isUnder(kind, machine))
        put(openGround(machineHalf(machine, kind, shop)), rows, (at * STAND_KINDS.length + ofKind) * width);
    });
  });
  return rows;
}
