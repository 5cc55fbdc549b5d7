import type { Interval } from '../../quantities/interval.ts';
import type { Verdict } from '../decision.ts';
import type { Case } from './case.ts';
import { type Outcome, passes } from './outcome.ts';

/**
 * One outcome for a family whose kinds are not all known: what every kind agrees on, else open. With `whole`
 * the need and have shown take in all kinds; without, it stops at the first kind after which it stays open.
 */
export function acrossKinds(cases: readonly Case[], judged: (of: Case) => Outcome, whole: boolean): Outcome {
  const outcomes: Outcome[] = [];
  let [some, none] = [false, false];
  for (const of of cases) {
    const outcome = judged(of);
    if (cases.length === 1) return outcome;
    outcomes.push(outcome);
    if (passes(outcome.verdict)) some = true;
    else if (outcome.verdict === 'fails') none = true;
    const staysOpen = (outcome.verdict === 'open' && !outcome.advisory) || (some && none);
    if (staysOpen && !whole) return { ...together(outcomes, true), partial: true };
  }
  return together(outcomes, false);
}

function together(outcomes: readonly Outcome[], partial: boolean): Outcome {
  const [first] = outcomes;
  if (first === undefined) throw new Error('no kind of the part to judge');
  const agreed = outcomes.every((each) => each.verdict === first.verdict);
  const allPass = outcomes.every((each) => passes(each.verdict));
  const verdict: Verdict = agreed ? first.verdict : allPass ? 'holds if' : 'open';
  const shown = outcomes.find((each) => each.verdict === verdict) ?? first;
  const differs = outcomes.some((each) => !isSame(each, first));
  // what was not looked at may differ: the kinds of the part are asked, the way of a table only where it shows
  const kinds = [
    ...(differs || partial ? (first.of.part?.kinds ?? []) : []),
    ...(differs ? first.of.orientation : []),
  ];
  return {
    ...shown,
    verdict,
    need: span(outcomes.map((each) => each.need)),
    have: span(outcomes.map((each) => each.have)),
    margin: span(outcomes.map((each) => each.margin)),
    relativeMargin: span(outcomes.map((each) => each.relativeMargin)),
    alsoAsked: outcomes.flatMap((each) => each.alsoAsked),
    mayHoldPlainly: outcomes.some((each) => each.mayHoldPlainly),
    hangsOn: [...outcomes.flatMap((each) => each.hangsOn), ...kinds],
    openOn: verdict === 'open' ? [...outcomes.flatMap((each) => each.openOn), ...kinds] : [],
    // only the seller's to say if no kind fails and none is open for another reason
    advisory:
      verdict === 'open' &&
      outcomes.every((each) => (each.verdict === 'open' ? each.advisory : passes(each.verdict))),
  };
}

const isSame = (a: Outcome, b: Outcome): boolean =>
  a.verdict === b.verdict && isEqual(a.need, b.need) && isEqual(a.have, b.have);
const isEqual = (a: Interval, b: Interval): boolean => a.low === b.low && a.high === b.high;

const span = (all: readonly Interval[]): Interval => ({
  low: Math.min(...all.map((each) => each.low)),
  high: Math.max(...all.map((each) => each.high)),
});
