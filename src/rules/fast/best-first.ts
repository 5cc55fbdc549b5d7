import type { Answers } from '../../questions/answers.ts';
import type { Candidate } from '../arranging/candidates.ts';
import type { World } from '../arranging/setting.ts';
import { unbeaten } from '../weighing/dominance.ts';
import { rankedOf } from '../weighing/ranked-of.ts';
import type { Ranked } from '../weighing/scores.ts';
import { type Bar, barsOf, isBehind } from './behind.ts';
import { type Hopes, withVises } from './hopes.ts';
import { type Bench, judgedOn } from './judge-one.ts';
import { type Tally, tallyDrop, tallyLeft } from './tally.ts';

/** An arrangement with the best that it may come to. */
export interface Hopeful {
  readonly candidate: Candidate;
  readonly hopes: Hopes;
}

/** What came of a search. */
export interface Found {
  /** those that pass, or may, as far as they were judged */
  readonly running: ReadonlyMap<string, { readonly ranked: Ranked; readonly candidate: Candidate }>;
  /** those that were judged and cannot pass, the last of them */
  readonly failed: readonly Candidate[];
  /** those that were not judged: behind, or one too many */
  readonly waiting: readonly Hopeful[];
  readonly looked: number;
  readonly unseen: number;
}

/** More than these are not judged: they take some milliseconds each. */
const MOST_JUDGED = 4000;
/** How many are judged before the bars are set anew. */
const AT_ONCE = 8;
const FAILED_KEPT = 40;

/**
 * Judges from the most hopeful on (they come in that order), until every other one is surely behind one that was judged. A bar
 * that moves may let one come again that was behind: so it goes round until nobody is left who is not.
 */
export function bestFirst(
  bench: Bench,
  world: World,
  answers: Answers,
  all: readonly Hopeful[],
  tally: Tally,
): Found {
  const { matters } = answers;
  const { band } = bench.shop.assume;
  const running = new Map<string, { ranked: Ranked; candidate: Candidate }>();
  const failed: Candidate[] = [];
  let looked = 0;
  let bars: readonly Bar[] = [];
  let sinceBars = 0;
  const setBars = (): void => {
    bars = barsOf(matters, band, unbeaten([...running.values()].map(({ ranked }) => ranked)));
    sinceBars = 0;
  };
  const isOut = ({ candidate, hopes }: Hopeful): boolean =>
    isBehind(hopes, bars, band) || isBehind(withVises(hopes, world, candidate), bars, band);
  const judge = (candidate: Candidate): void => {
    looked += 1;
    const found = judgedOn(bench, candidate);
    if ('drop' in found) {
      tallyDrop(tally, candidate.rotary.key, { id: found.drop.check });
      failed.push(candidate);
      if (failed.length > FAILED_KEPT) failed.shift();
      return;
    }
    running.set(candidate.id, { ranked: rankedOf(found.judged, bench.shop), candidate });
    tallyLeft(tally, candidate.rotary.key);
    sinceBars += 1;
    if (sinceBars >= AT_ONCE || running.size < AT_ONCE) setBars();
  };
  setBars();
  let waiting = all;
  for (let some = true; some && looked < MOST_JUDGED; ) {
    some = false;
    const next: Hopeful[] = [];
    for (const each of waiting) {
      if (looked >= MOST_JUDGED || isOut(each)) next.push(each);
      else {
        some = true;
        judge(each.candidate);
      }
    }
    setBars();
    waiting = next;
  }
  for (const { candidate } of waiting) tallyLeft(tally, candidate.rotary.key);
  const unseen = looked < MOST_JUDGED ? 0 : waiting.filter((each) => !isOut(each)).length;
  return { running, failed, waiting, looked, unseen };
}
