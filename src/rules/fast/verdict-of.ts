import type { Case } from '../judging/case.ts';
import type { Check } from '../judging/check.ts';
import { judge, passes } from '../judging/outcome.ts';

/** A verdict in three values: it passes, it is not settled, it fails. */
export type Three = 'passes' | 'not settled' | 'fails';

/** What a check says of one case, by the plain judge. */
export function threeOf(check: Check, of: Case): Three {
  if (!check.applies(of)) return 'passes';
  const { verdict } = judge(check, of);
  return verdict === 'fails' ? 'fails' : passes(verdict) ? 'passes' : 'not settled';
}
