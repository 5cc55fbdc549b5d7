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
      : `It would not be asked by itself as things stand: ${soFar(because)}.`;
  }
  const { touches, ordersOnly, left, outOf, alone } = because;
  if (alone) return 'Asked now because this alone can still change the result.';
  if (touches === 0) return 'Asked now because it can still change the result.';
  if (outOf !== null) return ofFew(because, outOf);
  if (left === 1) return 'Asked now because the one arrangement that may still win hangs on it.';
  if (ordersOnly)
    return `Asked now because it may change which of the ${left} that may still win comes first.`;
  const which = touches === left ? `any of the ${left}` : `${touches} of the ${left}`;
  return `Asked now because it may drop ${which} arrangements that may still win.`;
}

/** Of a few that were looked at. Example: 'Asked now because it may drop 14 of the 31 that may win, of those looked at; 12 345 are not ruled out.' */
function ofFew(
  { touches, ordersOnly, left }: Extract<Because, { readonly kind: 'narrows' }>,
  outOf: number,
): string {
  const open = `${formatNumber(outOf, 0, 'thin')} are not ruled out`;
  if (left === 1) return `Asked now because the one that may win of those looked at hangs on it; ${open}.`;
  if (ordersOnly)
    return `Asked now because it may change which of the ${left} that may win comes first, of those looked at; ${open}.`;
  const which = touches === left ? 'any' : touches;
  return `Asked now because it may drop ${which} of the ${left} that may win, of those looked at; ${open}.`;
}

/** How much is still to be asked. Example: 'about 5 to go' */
export function toAskWords({
  toAsk,
  isBasic,
  byFew,
}: {
  readonly toAsk: number | null;
  readonly isBasic: boolean;
  /** only a few of many arrangements were looked at */
  readonly byFew: boolean;
}): string {
  if (toAsk === null) return isBasic ? 'basic facts first' : 'what to ask is being worked out';
  // which of them apply hangs on those that are answered first
  if (isBasic) return toAsk === 1 ? '1 basic fact to go' : `up to ${toAsk} basic facts to go`;
  if (toAsk === 0) return 'nothing more to ask';
  return toAsk === 1 && !byFew ? '1 to go' : `about ${toAsk} to go`;
}

/** What stands over questions that are not asked. */
export const notAskedLead = (settled: Settled): string =>
  settled.isProven
    ? `Not asked, since they cannot change the result any more: ${provenClause(settled)}. Each can be answered all the same.`
    : `Not asked as things stand: ${soFar(settled, 'them')}. Each can be answered all the same.`;

/** Example: 'Taken meanwhile: 900, an assumption. Another value may change the result.' */
export const takenMeanwhileWords = (taken: string): string =>
  `Taken meanwhile: ${taken}. Another value may change the result.`;

/** What stands over those for which something is taken meanwhile. */
export const TAKEN_LEAD =
  'Not asked, and taken for known meanwhile; another value may change the result, so answer where yours differs:';

/** Of one question. Example: 'cannot change the result any more, whatever it means for doorway' */
export function notAskedReason(readBy: readonly string[], settled: Settled): string {
  if (!settled.isProven) return soFar(settled);
  const names = readerNames(readBy);
  if (names.length === 0) return 'cannot change the result any more';
  const list = names.length === 1 ? names[0] : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  return `cannot change the result any more, whatever it means for ${list}`;
}

const soFar = ({ byFew }: Settled, which = 'it'): string =>
  `nothing that ${byFew ? 'was looked at so far' : 'is open'} hangs on ${which}`;

const provenClause = ({ outcome }: Settled): string =>
  outcome === 'none'
    ? 'no arrangement passes, whatever the answer'
    : 'the recommendation is the same, whatever the answer';
