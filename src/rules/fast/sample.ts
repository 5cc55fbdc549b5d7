import type { Catalog } from '../../catalog/catalog.ts';
import type { Answers } from '../../questions/answers.ts';
import type { World } from '../arranging/setting.ts';
import type { Judged } from '../weighing/judged.ts';
import type { Closer, Hopeful } from './closer.ts';
import { sieved } from './judge-market.ts';
import { type Bench, judgedOn } from './judge-one.ts';

/** A few of a market that may pass, to see by them what is worth asking. */
export interface Sample {
  readonly judged: readonly Judged[];
  /** as many are not ruled out, these among them */
  readonly of: number;
}

/** How many are looked for, and how many of a stretch are tried before it is given up. */
const MOST = 24;
const CLOSER_TRIES = 6;
const JUDGED_TRIES = 2;

/**
 * Judges a few of those that the tables leave, the most hopeful first and thinner further down. The same answers give the
 * same few, however long it takes.
 */
export function sampleOf(bench: Bench, world: World, catalog: Catalog, answers: Answers): Sample {
  const { hopeful, closer } = sieved(bench, world, catalog, answers, new Map());
  const judged: Judged[] = [];
  let failed = 0;
  for (const [from, to] of stretchesOf(hopeful.length, MOST)) {
    const found = firstThatMayPass(bench, hopeful.slice(from, Math.min(to, from + CLOSER_TRIES)), closer);
    failed += found.failed;
    if (found.judged !== null) judged.push(found.judged);
  }
  return { judged, of: hopeful.length - failed };
}

/**
 * Cuts a list into stretches that get longer and longer, so that its beginning is looked at closest. Example: 100 into at
 * most 4 → [0, 2], [2, 9], [9, 31], [31, 100].
 */
export function stretchesOf(length: number, most: number): readonly (readonly [number, number])[] {
  const ends = Array.from({ length: most }, (_, at) => Math.round((length + 1) ** ((at + 1) / most)) - 1);
  const stretches: (readonly [number, number])[] = [];
  let from = 0;
  for (const end of ends) {
    if (end <= from) continue;
    stretches.push([from, end]);
    from = end;
  }
  return stretches;
}

function firstThatMayPass(
  bench: Bench,
  stretch: readonly Hopeful[],
  closer: (of: Hopeful) => Closer,
): { readonly judged: Judged | null; readonly failed: number } {
  let [failed, tries] = [0, 0];
  for (const each of stretch) {
    if (tries >= JUDGED_TRIES) break;
    if (!('drop' in closer(each))) {
      const found = judgedOn(bench, each.candidate);
      if ('judged' in found) return { judged: found.judged, failed };
      tries += 1;
    }
    failed += 1;
  }
  return { judged: null, failed };
}
