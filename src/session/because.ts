import type { Question } from '../questions/question.ts';
import type { Because, Settled } from '../rules/asking/because.ts';
import { HEDGED } from '../rules/asking/hedged.ts';
import type { AskingNow } from './asking-now.ts';
import { openBasics, worthAsking } from './next.ts';
import type { Session } from './session.ts';
import { type Item, isOpen, type Survey } from './survey.ts';
import type { World } from './world.ts';

const settledBy = ({ outcome, outOf, questions }: AskingNow): Settled => ({
  outcome,
  isProven: outcome !== 'open' && questions.length === 0,
  byFew: outOf !== null,
});

/**
 * What is taken for known while nobody is asked, in words: another value may change the result. Null where the result is
 * the same whatever the answer. Example: the price of a plate → '900, an assumption'.
 */
export function takenMeanwhile({ path, preset, unsure }: Question): string | null {
  if (HEDGED.has(path) || path === 'units') return null;
  return preset?.words ?? (unsure.as === 'value' ? unsure.words : null);
}

/** Null where it is asked as it comes: a basic fact, one that was answered before, or where everything is asked. */
export function becauseOf(item: Item, session: Session, world: World): Because | null {
  const asking = worthAsking(session, world);
  if (asking === null || asking === 'later' || !isOpen(item) || item.objection !== null) return null;
  const { questions, left, outOf } = asking;
  const found = questions.find(({ id, subject }) => id === item.question.id && subject === item.subject);
  if (found === undefined)
    return { kind: 'settled', taken: takenMeanwhile(item.question), ...settledBy(asking) };
  const { touches, ordersOnly } = found;
  // by another order other questions may come up
  const alone = questions.length === 1 && found.id !== 'matters' && outOf === null;
  return { kind: 'narrows', touches, ordersOnly, left, outOf, alone };
}

/** How far the interview is where only what is needed is asked. */
export interface NeededProgress {
  readonly answered: number;
  /** basic facts that are open, or else questions that can still change the result; null: nobody knows yet */
  readonly toAsk: number | null;
  readonly isBasic: boolean;
  /** only a few of many arrangements were looked at */
  readonly byFew: boolean;
}

/** Null where every question is asked. */
export function neededProgress(session: Session, { items }: Survey, world: World): NeededProgress | null {
  if (session.asks === 'all') return null;
  const answered = items.filter((item) => item.applies && !isOpen(item)).length;
  const basics = openBasics(session, world).length;
  if (session.kept.parts.length === 0) return { answered, toAsk: null, isBasic: true, byFew: false };
  if (basics > 0) return { answered, toAsk: basics, isBasic: true, byFew: false };
  const asking = worthAsking(session, world);
  if (asking === 'later') return { answered, toAsk: null, isBasic: false, byFew: false };
  const toAsk = asking === null ? items.filter(isOpen).length : asking.questions.length;
  const byFew = asking !== null && asking.outOf !== null;
  return { answered, toAsk, isBasic: false, byFew };
}

/** Of the open questions those that are not asked, and how the result stands without them; null where all are. */
export function notAsked(
  session: Session,
  world: World,
): { readonly settled: Settled; readonly has: (item: Item) => boolean } | null {
  const asking = worthAsking(session, world);
  if (asking === null || asking === 'later') return null;
  const { questions } = asking;
  const asked = new Set(questions.map(({ id, subject }) => JSON.stringify([id, subject])));
  return {
    settled: settledBy(asking),
    has: (item) => isOpen(item) && !asked.has(JSON.stringify([item.question.id, item.subject])),
  };
}
