import type { Answers } from '../../questions/answers.ts';
import type { Candidate } from '../arranging/candidates.ts';
import { unbeaten } from '../weighing/dominance.ts';
import { rankedOf } from '../weighing/ranked-of.ts';
import type { Ranked } from '../weighing/scores.ts';
import { type Bar, barsOf, isBehind } from './behind.ts';
import type { Hopeful } from './closer.ts';
import type { Hopes } from './hopes.ts';
import { type Bench, judgedOn } from './judge-one.ts';
import { type Tally, tallyDrop, tallyLeft } from './tally.ts';

/** What came of a search. */
export interface Found {
  /** those that pass, or may, as far as they were judged */
  readonly running: ReadonlyMap<string, Candidate>;
  /** of these the ones that no other beats */
  readonly field: readonly Ranked[];
  /** those that were judged and cannot pass, the last of them */
  readonly failed: readonly Candidate[];
  /** those that were not judged: behind, or one too many */
  readonly waiting: readonly Hopeful[];
  readonly looked: number;
  readonly unseen: number;
}

/** More than these are not judged: they take some milliseconds each. */
const MOST_JUDGED = 400;
/** How many are judged before the bars are set anew. */
const AT_ONCE = 8;
const FAILED_KEPT = 40;

/**
 * Judges from the most hopeful on (they come in that order), until every other one is surely behind one that was judged. A bar
 * that moves may let one come again that was behind: so it goes round until nobody is left who is not.
 */
export function bestFirst(
  bench: Bench,
  answers: Answers,
  all: readonly Hopeful[],
  closer: (of: Hopeful) => Hopes,
  tally: Tally,
): Found {
  const { matters } = answers;
  const { band } = bench.shop.assume;
  const running = new Map<string, Candidate>();
  const failed: Candidate[] = [];
  let looked = 0;
  let bars: readonly Bar[] = [];
  // whom one beats that was judged before is beaten for good: only the others are held against the next
  let field: readonly Ranked[] = [];
  const fresh: Ranked[] = [];
  const setBars = (): void => {
    field = unbeaten([...field, ...fresh]);
    fresh.length = 0;
    bars = barsOf(matters, band, field);
  };
  const seen = new Map<Hopeful, Hopes>();
  const closely = (each: Hopeful): Hopes => {
    const made = seen.get(each) ?? closer(each);
    seen.set(each, made);
    return made;
  };
  const isOut = (each: Hopeful): boolean =>
    isBehind(each.hopes, bars, band) || isBehind(closely(each), bars, band);
  const judge = (candidate: Candidate): void => {
    looked += 1;
    const found = judgedOn(bench, candidate);
    if ('drop' in found) {
      tallyDrop(tally, candidate.rotary.key, { id: found.drop.check });
      failed.push(candidate);
      if (failed.length > FAILED_KEPT) failed.shift();
      return;
    }
    const ranked = rankedOf(found.judged, bench.shop);
    fresh.push(ranked);
    running.set(candidate.id, candidate);
    tallyLeft(tally, candidate.rotary.key);
    if (fresh.length >= AT_ONCE || running.size < AT_ONCE) setBars();
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
  return { running, field, failed, waiting, looked, unseen };
}
