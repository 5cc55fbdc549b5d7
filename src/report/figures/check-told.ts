import { type Inline, say, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import type { CheckAt } from '../checks-at.ts';
import { CHECK_WORDS } from '../wording/checks.ts';

/** A check as a clause beside a picture. Example: 'swing: 90 mm needed, 160 mm there, margin 70 mm (✓ holds)' */
export function checkTold(check: CheckAt): readonly Inline[] {
  const { need, have, margin } = checkNumbers(check);
  const name = words(CHECK_WORDS[check.result.check].name);
  return say`${name}: ${need} needed, ${have} there, margin ${margin} (${verdictSign(check.result.verdict)})`;
}
