import type { CheckId } from '../rules/checks/ids.ts';
import { CHECK_WORDS } from './wording/checks.ts';

/** What one answer did to the field of arrangements. */
export interface LiveNumbers {
  readonly left: number;
  readonly total: number;
  /** null: nothing was judged before */
  readonly leftBefore: number | null;
  readonly dropped: { readonly check: CheckId; readonly count: number } | null;
  /** recommended as things stand, where it was another one before */
  readonly newLeader: { readonly machine: string; readonly rotary: string | null } | null;
  readonly deciding: number;
  readonly decidingBefore: number | null;
}

/**
 * The line after each answer. Example: '41 of 96 arrangements left; swing dropped 12.'; where the numbers did not
 * change it says what did, if anything: 'Still 41 of 96 arrangements left; 9 unknown values can still decide, 11 before.'
 */
export function liveLine(live: LiveNumbers): string {
  const { left, total, leftBefore } = live;
  const field = `${left} of ${total} ${total === 1 ? 'arrangement' : 'arrangements'} left`;
  if (left === leftBefore) return sentence([`Still ${field}`, ...asides(live)]);
  if (leftBefore !== null && left > leftBefore) {
    return sentence([`${field}, ${left - leftBefore} more than before`, ...asides(live)]);
  }
  const { dropped } = live;
  const cause = dropped === null ? [] : [`${CHECK_WORDS[dropped.check].name} dropped ${dropped.count}`];
  return sentence([field, ...cause, ...leader(live)]);
}

const sentence = (clauses: readonly string[]): string => `${clauses.join('; ')}.`;

const asides = (live: LiveNumbers): readonly string[] => [...leader(live), ...unknowns(live)];

function leader({ newLeader }: LiveNumbers): readonly string[] {
  if (newLeader === null) return [];
  const { machine, rotary } = newLeader;
  return [`ahead now: ${machine}${rotary === null ? '' : ` with ${rotary}`}`];
}

function unknowns({ deciding, decidingBefore }: LiveNumbers): readonly string[] {
  if (decidingBefore === null || deciding === decidingBefore) return [];
  if (deciding === 0) return ['nothing unknown decides any more'];
  return [
    `${deciding} unknown ${deciding === 1 ? 'value' : 'values'} can still decide, ${decidingBefore} before`,
  ];
}
