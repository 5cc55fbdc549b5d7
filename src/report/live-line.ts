import type { CheckId } from '../rules/checks/ids.ts';
import { CHECK_WORDS } from './wording/checks.ts';

/** What one answer did to the field of arrangements. */
export interface LiveNumbers {
  readonly left: number;
  readonly total: number;
  /** null: nothing was judged before */
  readonly leftBefore: number | null;
  /** the check that drops most more than before, and how many more: others may drop fewer than before */
  readonly dropped: { readonly check: CheckId; readonly count: number } | null;
  /** recommended as things stand, where it was another one before */
  readonly newLeader: { readonly machine: string; readonly rotary: string | null } | null;
  /** nothing is left: what comes nearest, and what drops it */
  readonly nearest: {
    readonly machine: string;
    readonly rotary: string | null;
    readonly check: CheckId;
  } | null;
  readonly deciding: number;
  readonly decidingBefore: number | null;
}

/**
 * The line after each answer. Example: '41 of 96 arrangements left; swing dropped 12.'; where several checks had a
 * hand in it: '41 of 96 arrangements left, 20 fewer, mainly by swing.'; where the numbers did not change it says what did, if anything: 'Still 41 of 96 arrangements left; 9 unknown values can still decide, 11 before.'
 * Where none is left it says what stops the nearest: 'Still 0 of 96 arrangements left; swing drops the nearest, Rowan with Wren.'
 */
export function liveLine(live: LiveNumbers): string {
  const { left, total, leftBefore } = live;
  const field = `${left} of ${total} ${total === 1 ? 'arrangement' : 'arrangements'} left`;
  if (left === leftBefore) return sentence([`Still ${field}`, ...asides(live)]);
  if (leftBefore !== null && left > leftBefore) {
    return sentence([`${field}, ${left - leftBefore} more than before`, ...asides(live)]);
  }
  return sentence([...fewer(live, field), ...leader(live), ...nearest(live)]);
}

/** A number stands behind a check only where it is the whole difference. */
function fewer({ left, total, leftBefore, dropped }: LiveNumbers, field: string): readonly string[] {
  if (dropped === null) return [field];
  const { name } = CHECK_WORDS[dropped.check];
  const gone = (leftBefore ?? total) - left;
  return dropped.count === gone
    ? [field, `${name} dropped ${gone}`]
    : [`${field}, ${gone} fewer, mainly by ${name}`];
}

const sentence = (clauses: readonly string[]): string => `${clauses.join('; ')}.`;

/** Where nothing is left, no unknown value can decide any more. */
const asides = (live: LiveNumbers): readonly string[] => [
  ...leader(live),
  ...(live.left > 0 ? unknowns(live) : nearest(live)),
];

interface Named {
  readonly machine: string;
  readonly rotary: string | null;
}

const nameOf = ({ machine, rotary }: Named): string =>
  `${machine}${rotary === null ? '' : ` with ${rotary}`}`;

const leader = ({ newLeader }: LiveNumbers): readonly string[] =>
  newLeader === null ? [] : [`ahead now: ${nameOf(newLeader)}`];

const nearest = ({ nearest: found }: LiveNumbers): readonly string[] =>
  found === null ? [] : [`${CHECK_WORDS[found.check].name} drops the nearest, ${nameOf(found)}`];

function unknowns({ deciding, decidingBefore }: LiveNumbers): readonly string[] {
  if (decidingBefore === null || deciding === decidingBefore) return [];
  if (deciding === 0) return ['nothing that is still unknown can change the answer'];
  return [
    `${deciding} unknown ${deciding === 1 ? 'value' : 'values'} can still decide, ${decidingBefore} before`,
  ];
}
