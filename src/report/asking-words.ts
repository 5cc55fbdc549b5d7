import { formatNumber } from '../quantities/format-number.ts';
import type { Because, Settled } from '../rules/asking/because.ts';
import { readerNames } from './reader-names.ts';

/** Example: 14 of 31 → 'Asked now because it may drop 14 of the 31 arrangements that may still win.' */
export function becauseLine(because: Because): string {
  if (because.kind === 'settled') {
    if (because.taken !== null)
      return `It would not be asked by itself. ${takenMeanwhileWords(because.taken)}`;
    return because.isProven
      ? `It would not be asked by itself: it cannot change the result any more, since ${provenClause(because)}.`
      : `It would not be asked by itself as things stand: ${SO_FAR}.`;
  }
  const { touches, ordersOnly, left, outOf, alone } = because;
  if (alone) return 'Asked now because this alone can still change the result.';
  if (touches === 0) return 'Asked now because it can still change the result.';
  if (outOf !== null) {
    const looked = `that ${left === 1 ? 'was' : 'were'} looked at, of ${formatNumber(outOf, 0, 'thin')} arrangements that may pass`;
    return ordersOnly
      ? `Asked now because it may change the order of the ${left} ${looked}.`
      : `Asked now because it may drop ${touches === left ? 'any' : touches} of the ${left} ${looked}.`;
  }
  if (left === 1) return 'Asked now because the one arrangement that may still win hangs on it.';
  if (ordersOnly)
    return `Asked now because it may change which of the ${left} that may still win comes first.`;
  const which = touches === left ? `any of the ${left}` : `${touches} of the ${left}`;
  return `Asked now because it may drop ${which} arrangements that may still win.`;
}

/** How much is still to be asked. Example: 'about 5 to go' */
export function toAskWords({
  toAsk,
  isBasic,
}: {
  readonly toAsk: number | null;
  readonly isBasic: boolean;
}): string {
  if (toAsk === null) return isBasic ? 'basic facts first' : 'what to ask is being worked out';
  // which of them apply hangs on those that are answered first
  if (isBasic) return toAsk === 1 ? '1 basic fact to go' : `up to ${toAsk} basic facts to go`;
  if (toAsk === 0) return 'nothing more to ask';
  return toAsk === 1 ? '1 to go' : `about ${toAsk} to go`;
}

/** What stands over questions that are not asked. */
export const notAskedLead = (settled: Settled): string =>
  settled.isProven
    ? `Not asked, since they cannot change the result any more: ${provenClause(settled)}. Each can be answered all the same.`
    : `Not asked as things stand: nothing that is open hangs on them. Each can be answered all the same.`;

/** Example: 'Taken meanwhile: 900, an assumption. Another value may change the result.' */
export const takenMeanwhileWords = (taken: string): string =>
  `Taken meanwhile: ${taken}. Another value may change the result.`;

/** What stands over those for which something is taken meanwhile. */
export const TAKEN_LEAD =
  'Not asked, and taken for known meanwhile; another value may change the result, so answer where yours differs:';

/** Of one question. Example: 'cannot change the result any more, whatever it means for doorway' */
export function notAskedReason(readBy: readonly string[], { isProven }: Settled): string {
  if (!isProven) return SO_FAR;
  const names = readerNames(readBy);
  if (names.length === 0) return 'cannot change the result any more';
  const list = names.length === 1 ? names[0] : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  return `cannot change the result any more, whatever it means for ${list}`;
}

const SO_FAR = 'nothing that is open hangs on it';

const provenClause = ({ outcome }: Settled): string =>
  outcome === 'none'
    ? 'no arrangement passes, whatever the answer'
    : 'the recommendation is the same, whatever the answer';
