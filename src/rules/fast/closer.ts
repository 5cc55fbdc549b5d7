import type { Candidate } from '../arranging/candidates.ts';
import { BARE, groundOf, type World } from '../arranging/setting.ts';
import { mostStations } from '../arranging/vise-stations.ts';
import { swapHoursOf, swapsOf } from '../weighing/swaps.ts';
import { havesOn } from './have-rows.ts';
import type { Hopes, KnownOf } from './hopes.ts';
import { pairLookup } from './pair-sets.ts';
import type { Survivor } from './survey.ts';
import { machineHalf, pairAt, type Tables } from './tables.ts';

/** An arrangement with the best that it may come to. */
export interface Hopeful {
  readonly candidate: Candidate;
  /** null: a built-in table, of which the tables know nothing */
  readonly pair: Survivor | null;
  readonly hopes: Hopes;
}

type HopesOf = (of: Candidate, fails: Uint32Array, known?: KnownOf) => Hopes;

/**
 * Looks closer at one that is not behind yet: at the ranked checks whose haves take the stand as well, at the vises that find
 * room at all, and at the lifts that follow from that. Takes a fraction of what judging it takes.
 */
export function closerBy(tables: Tables, world: World, hopesOf: HopesOf): (of: Hopeful) => Hopes {
  const { words } = tables.bits;
  const lookup = pairLookup(words, 'fails');
  const pairs = tables.pairs.filter(({ ofMachine }) => !ofMachine);
  const put = havesOn(tables.haves.sides, tables.shop);
  const haves = new Float64Array(tables.haves.sides.length * 2);
  return ({ candidate, pair, hopes }) => {
    if (pair === null) return hopes;
    const fails = pair.fails.slice();
    const { machine, stand } = pairAt(tables, pair);
    put({ ...machineHalf(machine, stand.rotary, tables.shop), stand }, haves, 0);
    for (const each of pairs) {
      const found = lookup(each, pair.stand, haves, 0);
      for (let word = 0; word < words; word += 1)
        fails[word] = (fails[word] as number) | (found[word] as number);
    }
    return hopesOf(candidate, fails, visesOf(world, candidate));
  };
}

function visesOf(world: World, candidate: Candidate): KnownOf {
  const most = [false, true].map((turned) =>
    mostStations(groundOf(world, candidate, { ...BARE, place: { ...BARE.place, turned } })),
  );
  // a level spindle: no vise holds work toward it
  const vises = Math.max(0, ...most.map((each) => each ?? 0));
  const swaps = swapsOf(world.shop, false, { low: 0, high: vises });
  return { vises, swapHours: swapHoursOf(world.shop, swaps).low };
}
