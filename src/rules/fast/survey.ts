import { type Candidate, candidateOn, standsOn } from '../arranging/candidates.ts';
import { perSet } from './per-set.ts';
import { sieveOf } from './sieve.ts';
import { pairAt, type Tables } from './tables.ts';
import { type Tally, tallyDrop } from './tally.ts';

/** An arrangement that may pass, as far as the tables say. */
export interface Survivor {
  readonly machine: number;
  readonly stand: number;
  /** the families that fail in every setting; the same array for all of which the same ones do */
  readonly fails: Uint32Array;
}

/** One that cannot pass, kept since it comes nearest of many. */
interface Dropped extends Survivor {
  /** hours of the families that nothing stops */
  readonly possible: number;
}

export interface Survey {
  readonly survivors: readonly Survivor[];
  /** by the class of the rotary, the few that lose fewest hours */
  readonly nearest: ReadonlyMap<string, readonly Dropped[]>;
}

/** How many of a class are kept for want of one that passes. */
const NEAREST = 12;

/** Looks at every machine with every rotary in each of its mountings; what drops is counted. */
export function surveyOf(tables: Tables, tally: Tally): Survey {
  const sieve = sieveOf(tables);
  const { bits, stands, machines } = tables;
  const survivors: Survivor[] = [];
  const kept = perSet(bits.words, (fails) => fails.slice());
  const nearest = new Map<string, Dropped[]>();
  stands.forEach((under, stand) => {
    const { class: kind, key } = under.rotary;
    const known = nearest.get(kind) ?? [];
    nearest.set(kind, known);
    const noteDrop = (machine: number, fails: Uint32Array): void => {
      const possible = bits.all - bits.hours(fails, 'high');
      if (known.length >= NEAREST && possible <= (known.at(-1)?.possible ?? 0)) return;
      known.push({ machine, stand, fails: kept(fails), possible });
      known.sort((a, b) => b.possible - a.possible);
      known.length = Math.min(known.length, NEAREST);
    };
    const everywhere = sieve.anyMachine(stand);
    machines.forEach((on, machine) => {
      if (!standsOn(under, on)) return;
      const { drop, fails } = everywhere ?? sieve.on(machine, stand);
      if (drop === null) {
        survivors.push({ machine, stand, fails: kept(fails) });
        return;
      }
      tallyDrop(tally, key, drop);
      noteDrop(machine, fails);
    });
  });
  return { survivors, nearest };
}

/** The arrangement of a pair, as the plain judge takes it. */
export function candidateAt(
  tables: Pick<Tables, 'machines' | 'stands'>,
  of: Pick<Survivor, 'machine' | 'stand'>,
): Candidate {
  const { machine, stand } = pairAt(tables, of);
  return candidateOn(machine, stand);
}
