import { readerNames } from './reader-names.ts';

/** Why a question is asked now, in numbers. */
type BecauseNumbers =
  | {
      readonly kind: 'narrows';
      readonly touches: number;
      readonly ordersOnly: boolean;
      readonly left: number;
      readonly alone: boolean;
    }
  | ({ readonly kind: 'settled' } & SettledNumbers);

/** How the result stands where a question cannot change it any more. */
interface SettledNumbers {
  readonly outcome: 'recommended' | 'none' | 'open';
  readonly left: number;
}

/** Example: 14 of 31 → 'Asked now because it may drop 14 of the 31 arrangements that may still win.' */
export function becauseLine(because: BecauseNumbers): string {
  if (because.kind === 'settled') {
    return `It would not be asked by itself: it cannot change the result any more, because ${settledClause(because)}.`;
  }
  const { touches, ordersOnly, left, alone } = because;
  if (alone) return 'Asked now because this alone can still change the result.';
  if (touches === 0) return 'Asked now because it can still change the result.';
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
  if (toAsk === null) return 'being worked out';
  if (isBasic) return `${toAsk} basic ${toAsk === 1 ? 'fact' : 'facts'} to go`;
  return toAsk === 0 ? 'nothing more to ask' : `about ${toAsk} to go`;
}

/** What stands over questions that are not asked. */
export const notAskedLead = (settled: SettledNumbers): string =>
  `Not asked, because they cannot change the result any more: ${settledClause(settled)}. Each can be answered all the same.`;

/** Of one question, by what reads it. Example: 'cannot change the result any more: doorway is settled without it' */
export function notAskedReason(readBy: readonly string[]): string {
  const names = readerNames(readBy);
  if (names.length === 0) return 'cannot change the result any more';
  const list = names.length === 1 ? names[0] : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  return `cannot change the result any more: ${list} ${names.length === 1 ? 'is' : 'are'} settled without it`;
}

function settledClause({ outcome, left }: SettledNumbers): string {
  if (outcome === 'none') return 'no arrangement passes, whatever it is';
  if (outcome === 'recommended') return 'the same arrangement is recommended, whatever it is';
  return left === 1
    ? 'the one arrangement that may still win does not hang on it'
    : `none of the ${left} arrangements that may still win hangs on it`;
}
