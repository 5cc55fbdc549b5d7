import type { CheckId } from '../rules/checks/ids.ts';
import type { Bounded, Verdict } from '../rules/decision.ts';
import { type Inline, number, say, words } from './blocks/inline.ts';
import type { CheckAt } from './checks-at.ts';

/** Checks that ask whether something is there: their numbers are a yes (1) or a no (0). */
const YES_OR_NO: ReadonlySet<CheckId> = new Set([
  'tool-center-point',
  'rotating-work-offset',
  'tilted-work-plane',
]);

export interface CheckNumbers {
  readonly need: readonly Inline[];
  readonly have: readonly Inline[];
  readonly margin: readonly Inline[];
  /** what is missing, without a sign; empty where nothing can be said in a number */
  readonly short: readonly Inline[];
}

/** What a check compares, as pieces of a sentence: numbers, yes or no, or that there is nothing to compare. */
export function checkNumbers({ result, path }: CheckAt): CheckNumbers {
  const { check, verdict, need, have, unit } = result;
  if (YES_OR_NO.has(check)) {
    return { need: yesOrNo(need), have: thereIs(have, verdict), margin: NOTHING, short: [] };
  }
  if (verdict === 'holds' && (have === null || need === null)) {
    return { need: say`nothing`, have: NOTHING, margin: NOTHING, short: [] };
  }
  const at = (key: 'need' | 'have' | 'margin', magnitude = false): readonly Inline[] => [
    number([...path, key], unit, { magnitude }),
  ];
  return { need: at('need'), have: at('have'), margin: at('margin'), short: at('margin', true) };
}

const NOTHING = say`–`;

/** What does not come with the machine may still be had, or not be needed. */
const thereIs = (have: Bounded, verdict: Verdict): readonly Inline[] => {
  if (typeof have !== 'number') return [words('not known')];
  return [words(have > 0 ? 'comes with it' : AS_IT_COMES[verdict])];
};

const AS_IT_COMES: Readonly<Record<Verdict, string>> = {
  holds: 'not as it comes',
  'holds if': 'can be ordered',
  open: 'not as it comes',
  fails: 'not offered',
};

const yesOrNo = (value: Bounded): readonly Inline[] => [
  words(typeof value !== 'number' ? 'not known' : value > 0 ? 'yes' : 'no'),
];
