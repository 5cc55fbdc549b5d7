import type { Bounded, Verdict } from './check-result.ts';

/** How the rotary is lifted on and off: every means of the shop against it, and the one that is chosen. */

/** One of the shop's means; `need` and `have` in kg of rotary and plates. */
export interface LiftingMeans {
  readonly by: 'hand' | 'forklift' | 'hoist';
  readonly need: Bounded;
  readonly have: Bounded;
  readonly verdict: Verdict;
  /** people who lift together; by hand only */
  readonly people: Bounded;
  /** load center of rotary and plates, mm; forklift only */
  readonly loadCenter: Bounded;
  /** hoist only */
  readonly sling: SlingNeeds | null;
}

/** What hook and sling of a hoist have to be. */
export interface SlingNeeds {
  /** height of the hook, mm */
  readonly hookNeed: Bounded;
  readonly hookHave: Bounded;
  /** pull on each leg that carries, kg; null where the legs are too flat */
  readonly legPull: Bounded;
  /** axial rating that each eye bolt needs at that angle, kg */
  readonly eyeBolt: Bounded;
}

export interface LiftingDecision {
  /** rotary with its plates, kg */
  readonly mass: Bounded;
  /** lifts a year, on or off */
  readonly swaps: Bounded;
  readonly means: readonly LiftingMeans[];
  /** chosen: that means; stays-on: none suffices and none has to; none: none suffices; open: not known */
  readonly outcome: 'chosen' | 'stays-on' | 'none' | 'open';
  /** which of the means, counted from 0 */
  readonly chosen: number | null;
}
