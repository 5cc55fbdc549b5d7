import type { Catalog } from '../catalog/catalog.ts';
import { longestRoom } from '../catalog/longest-room.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { Answers, Part, Uncertain } from '../questions/answers.ts';
import type { DescribeContext } from '../questions/describe-value.ts';
import type { Asking } from '../rules/asking/asking.ts';
import type { Decision } from '../rules/decision.ts';
import { type AskingNow, askingNow } from './asking-now.ts';
import type { Kept } from './kept.ts';
import { asksSize, type Setting, type Survey, surveyOf } from './survey.ts';

/** The engine, as the session needs it. */
export type Decide = (
  answers: Answers,
  catalog: Catalog,
  options: {
    readonly shownIn: LengthUnits;
    readonly traces: boolean;
    /** list every arrangement, or these besides */
    readonly all?: boolean;
    readonly also?: readonly string[];
    /** what would let the nearest misses, and these, through */
    readonly flips?: readonly string[];
    /** how far each answer may move while the recommendation stays */
    readonly ranges?: boolean;
  },
) => Decision;

/** What is worth asking, as the engine has it; 'later': it is being worked out. `unasked`: paths of open questions. */
export type Ask = (answers: Answers, catalog: Catalog, unasked: readonly string[]) => Asking | 'later';

/** All that the session reads besides itself. Everything in it is worked out once for the same answers. */
export interface World {
  readonly setting: Setting;
  readonly survey: (kept: Kept) => Survey;
  /** The decision on all answers; null while nobody was asked for the size of any part. */
  readonly decision: (kept: Kept) => Decision | null;
  /** The same without the traces of its checks, on the parts that have a size: what is being entered is left out. */
  readonly liveDecision: (kept: Kept) => Decision | null;
  /** Every arrangement, without the traces of its checks. */
  readonly everyArrangement: (kept: Kept) => Decision | null;
  /** The decision with this arrangement in it, whether it is worth reading or not. */
  readonly decisionWith: (kept: Kept, id: string) => Decision | null;
  /** The decision with how far each answer may move while the recommendation stays: what is exported. */
  readonly decisionWithRanges: (kept: Kept) => Decision | null;
  /**
   * Which open questions can still change the result; null while no part has a size, or where nobody works it out;
   * 'later' while it is being worked out.
   */
  readonly asking: (kept: Kept) => AskingNow | 'later' | null;
}

/** Ties the session to a catalog and an engine. What `decide` throws is not caught. `ask` null: nobody says what is worth asking. */
export function createWorld(catalog: Catalog, decide: Decide, ask: Ask | null = null): World {
  const setting: Setting = {
    offer: { machines: catalog.machines },
    currency: catalog.currency,
    longest: longestRoom(catalog),
  };
  const survey = remembered((kept: Kept) => surveyOf(kept, setting));
  // An answer that only says what was taken anyway changes nothing, and needs no deciding again.
  let last: { readonly question: string; readonly decision: Decision } | null = null;
  const judged = (kept: Kept, parts: readonly Part[], traces: boolean, more: More = {}): Decision | null => {
    if (parts.length === 0) return null;
    const answers = { ...survey(kept).answers, parts };
    const options = { shownIn: unitsOf(kept), traces, ...more };
    const question = JSON.stringify([answers, options]);
    if (last?.question !== question) last = { question, decision: decide(answers, catalog, options) };
    return last.decision;
  };
  const all = (kept: Kept): readonly Part[] => {
    const { parts } = survey(kept).answers;
    return parts.some(hasSize) || begun(survey(kept)).length > 0 ? parts : [];
  };
  const decision = remembered((kept: Kept) => judged(kept, all(kept), true, { flips: [] }));
  return {
    setting,
    survey,
    decision,
    liveDecision: remembered((kept: Kept) => judged(kept, begun(survey(kept)), false)),
    everyArrangement: remembered((kept: Kept) => judged(kept, all(kept), false, { all: true })),
    decisionWith: (kept, id) => judged(kept, all(kept), true, { also: [id], flips: [id] }),
    asking: remembered((kept: Kept) => {
      if (ask === null || !all(kept).some(hasSize)) return null;
      return askingNow(survey(kept), (answers, unasked) => ask(answers, catalog, unasked));
    }),
    decisionWithRanges: remembered((kept: Kept) =>
      judged(kept, all(kept), true, { flips: [], ranges: true }),
    ),
  };
}

type More = Pick<Parameters<Decide>[2], 'all' | 'also' | 'flips' | 'ranges'>;

/** Units of what is typed without one. */
export function unitsOf(kept: Kept): LengthUnits {
  const units = kept.shop.units;
  return units?.from !== 'not sure' && units?.value === 'inch' ? 'inch' : 'mm';
}

/** What an answer is put in words with: the units of the interview first. */
export function wordsIn(kept: Kept, { setting }: World): World['setting'] & DescribeContext {
  const units = unitsOf(kept);
  return { ...setting, units, first: units };
}

/** Parts of which a size was asked for and answered, be it with *not sure*. */
function begun({ answers, items }: Survey): readonly Part[] {
  const waiting = new Set(
    items
      .filter(({ question, applies, given }) => applies && asksSize(question) && given === undefined)
      .map(({ subject }) => subject),
  );
  return answers.parts.filter((_, index) => !waiting.has(index));
}

/** Whether a part has a size, be it a range. */
function hasSize(part: Part): boolean {
  const known = (...sizes: readonly Uncertain[]) => sizes.every((size) => size !== 'unknown');
  return part.shape === 'round' ? known(part.diameter, part.length) : known(...part.size);
}

/** Remembers what was worked out; what is not there yet ('later') is asked for again. */
function remembered<Key extends object, Result>(work: (key: Key) => Result): (key: Key) => Result {
  const results = new WeakMap<Key, { readonly result: Result }>();
  return (key) => {
    const found = results.get(key);
    if (found !== undefined) return found.result;
    const result = work(key);
    if (result !== 'later') results.set(key, { result });
    return result;
  };
}
