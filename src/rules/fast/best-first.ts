import type { Answers } from '../../questions/answers.ts';
import type { Candidate } from '../arranging/candidates.ts';
import { unbeaten } from '../weighing/dominance.ts';
import type { Judged } from '../weighing/judged.ts';
import { rankedOf } from '../weighing/ranked-of.ts';
import type { Ranked } from '../weighing/scores.ts';
import { type Bar, barsOf, isBehind } from './behind.ts';
import type { Closer, Hopeful } from './closer.ts';
import { byHope, type Hopes } from './hopes.ts';
import { type Bench, judgedOn } from './judge-one.ts';
import { type Tally, tallyDrop, tallyLeft } from './tally.ts';

/** What came of a search. */
export interface Found {
  /** those that pass, or may, as far as they were judged */
  readonly running: ReadonlyMap<string, Candidate>;
  /** of these the ones that no other beats, as they were judged */
  readonly field: readonly Judged[];
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

/** One that was looked at closer and is not behind. */
interface Near extends Hoped {
  readonly each: Hopeful;
}

/**
 * Judges from the most hopeful on (they come in that order), until every other one is surely behind one that was judged. One
 * is looked at closer before it is judged, and waits its turn by what that shows. A bar that moves may let one come again
 * that was behind: so it goes round until nobody is left who is not.
 */
export function bestFirst(
  bench: Bench,
  answers: Answers,
  all: readonly Hopeful[],
  closer: (of: Hopeful) => Closer,
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
  let judged = new Map<string, Judged>();
  const setBars = (): void => {
    field = unbeaten([...field, ...fresh]);
    fresh.length = 0;
    judged = new Map(field.flatMap(({ id }) => asEntry(id, judged.get(id))));
    bars = barsOf(matters, band, field);
  };
  const seen = new Map<Hopeful, Closer>();
  const closely = (each: Hopeful): Closer => {
    const made = seen.get(each) ?? closer(each);
    seen.set(each, made);
    return made;
  };
  const isOut = (hopes: Hopes): boolean => isBehind(hopes, bars, band);
  const dropped = (candidate: Candidate, check: Parameters<typeof tallyDrop>[2]): void => {
    tallyDrop(tally, candidate.rotary.key, check);
    failed.push(candidate);
    if (failed.length > FAILED_KEPT) failed.shift();
  };
  const judge = (candidate: Candidate): void => {
    looked += 1;
    const found = judgedOn(bench, candidate);
    if ('drop' in found) {
      dropped(candidate, { id: found.drop.check });
      return;
    }
    fresh.push(rankedOf(found.judged, bench.shop));
    judged.set(candidate.id, found.judged);
    running.set(candidate.id, candidate);
    tallyLeft(tally, candidate.rotary.key);
    if (fresh.length >= AT_ONCE || running.size < AT_ONCE) setBars();
  };
  /** The most hopeful last. */
  const near: Near[] = [];
  const comesNear = (one: Near): void => {
    let [from, to] = [0, near.length];
    while (from < to) {
      const middle = (from + to) >>> 1;
      if (order(matters, near[middle] as Near, one) > 0) from = middle + 1;
      else to = middle;
    }
    near.splice(from, 0, one);
  };

  let waiting = all;
  for (let some = true; some && looked < MOST_JUDGED; ) {
    some = false;
    setBars();
    const behind: Hopeful[] = [];
    /** Judges those that are more hopeful than this one; null: all of them. */
    const judgeBefore = (hopes: Hopes | null): void => {
      for (let next = near.at(-1); next !== undefined; next = near.at(-1)) {
        if (hopes !== null && byHope(matters, next.hopes, hopes) >= 0) return;
        near.pop();
        if (looked >= MOST_JUDGED || isOut(next.hopes)) behind.push(next.each);
        else {
          some = true;
          judge(next.each.candidate);
        }
      }
    };
    for (const each of waiting) {
      judgeBefore(each.hopes);
      const close = looked >= MOST_JUDGED || isOut(each.hopes) ? null : closely(each);
      if (close === null) behind.push(each);
      else if ('drop' in close) dropped(each.candidate, close.drop);
      else comesNear({ each, candidate: each.candidate, hopes: close.hopes });
    }
    judgeBefore(null);
    waiting = behind.toSorted((a, b) => order(matters, a, b));
  }
  setBars();
  for (const { candidate } of waiting) tallyLeft(tally, candidate.rotary.key);
  const unseen =
    looked < MOST_JUDGED ? 0 : waiting.filter((each) => !isOut(each.hopes) && mayBeAhead(each)).length;
  return { running, field: [...judged.values()], failed, waiting, looked, unseen };

  function mayBeAhead(each: Hopeful): boolean {
    const close = closely(each);
    return !('drop' in close) && !isOut(close.hopes);
  }
}

type Hoped = Pick<Hopeful, 'candidate' | 'hopes'>;

const order = (matters: Answers['matters'], a: Hoped, b: Hoped): number =>
  byHope(matters, a.hopes, b.hopes) || (a.candidate.id < b.candidate.id ? -1 : 1);

const asEntry = (id: string, judged: Judged | undefined): readonly (readonly [string, Judged])[] =>
  judged === undefined ? [] : [[id, judged]];
