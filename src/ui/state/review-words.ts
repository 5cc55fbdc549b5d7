import { notAskedReason, takenMeanwhileWords } from '../../report/asking-words.ts';
import type { Settled } from '../../rules/asking/because.ts';
import type { ReviewLine } from '../../session/review.ts';

/** What stands there already while nobody has answered is said to be the usual answer. */
export const reviewWords = ({ words, state, objection }: ReviewLine): string =>
  words === null
    ? 'no answer yet'
    : state === 'open' && objection === null
      ? `${words} (usual answer)`
      : words;

/** Why a question is not asked any more. */
export function notAskedWords({ state, readBy, taken }: ReviewLine, settled: Settled | null): string {
  if (state !== 'not asked' || settled === null) return '';
  if (taken !== null) return `Not asked. ${takenMeanwhileWords(taken)}`;
  return `Not asked: ${notAskedReason(readBy, settled)}.`;
}

/** How each answer stands, at the right of its row. */
export const REVIEW_STATES = {
  typed: 'typed',
  usual: 'usual',
  'not sure': 'not sure',
  open: 'open',
  'not asked': 'not asked',
  ignored: 'does not apply',
} as const;
