import type { TextLook } from '../../report/exports/text-blocks.ts';
import { sideBySideLines, whatIfLines } from '../../report/exports/variants.ts';
import type { Session } from '../../session/session.ts';
import { NO_RESULT, triedBeside, variantsBeside } from '../../session/trial-screens.ts';
import type { World } from '../../session/world.ts';

/** What is tried against the answers of the interview, or the variants beside them; empty where it stands at neither. */
export function trialText(session: Session, world: World, look: TextLook): string {
  const { at } = session.at;
  if (at !== 'trial' && at !== 'variants') return '';
  const beside = (at === 'trial' ? triedBeside : variantsBeside)(session, world);
  if (beside === null) return NO_RESULT;
  return (at === 'trial' ? whatIfLines : sideBySideLines)(beside, look).join('\n');
}
