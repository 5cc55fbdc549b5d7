import type { Decision } from '../rules/decision.ts';

/** Exit codes by outcome: an arrangement is recommended, none passes, an unknown answer decides. */
export const OUTCOME_CODES: Readonly<Record<Decision['outcome'], number>> = {
  recommended: 0,
  none: 3,
  open: 4,
};

/** Input or usage that cannot be used. */
export const UNUSABLE = 2;

/** An export in which something does not come out as it stands there. */
export const DIFFERENCES = 1;
