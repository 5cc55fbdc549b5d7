import type { Decision } from '../../rules/decision.ts';
import { type ArrangementAt, arrangementAt } from '../checks-at.ts';

/** The arrangement that is drawn: the recommended one, else one that may still win, else the nearest miss. */
export const picturedArrangement = (decision: Decision): ArrangementAt | undefined =>
  arrangementAt(
    decision,
    decision.recommended ?? decision.contenders[0] ?? decision.nearestMisses[0] ?? null,
  );
