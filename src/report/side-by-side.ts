import type { Beside } from '../rules/beside.ts';
import type { Decision } from '../rules/decision.ts';
import { type Changed, changedBetween } from './changed.ts';

/**
 * The first decision with all of them in it, so that every number that is told still stands at one path:
 * `columns[1].decision.arrangements[4].measures.price`.
 */
export interface SideBySide extends Decision {
  readonly columns: Beside['columns'];
  readonly answersBeside: Beside['answers'];
}

/** Undefined where nothing is held against anything. */
export function sideBySideOf({ columns, answers }: Beside): SideBySide | undefined {
  const [first] = columns;
  return first === undefined ? undefined : { ...first.decision, columns, answersBeside: answers };
}

/** The same of two, with what the second makes of the first. */
export interface TriedDecision extends SideBySide {
  readonly before: Decision;
  readonly after: Decision;
  readonly changed: Changed;
}

/** Undefined where there are not two. */
export function triedDecision(beside: Beside): TriedDecision | undefined {
  const [first, second] = beside.columns;
  const whole = sideBySideOf(beside);
  if (first === undefined || second === undefined || whole === undefined) return undefined;
  const [before, after] = [first.decision, second.decision];
  return { ...whole, before, after, changed: changedBetween(before, after) };
}
