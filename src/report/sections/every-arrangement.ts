import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, list } from '../blocks/block.ts';
import { say, strong, verdictSign, words } from '../blocks/inline.ts';
import { arrangementName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { STAGE_WORDS } from '../wording/stages.ts';

/** Every arrangement that the decision lists, a line each: how it stands, or where and by what it dropped. */
export function everyArrangement(decision: Decision): readonly Block[] {
  const items = decision.arrangements.map(({ id, dropped, passes, verdict }, index) => {
    const name = strong(arrangementName(decision, id, ['arrangements', index, 'id']));
    if (dropped === null) {
      const stands = passes === 'yes' ? (id === decision.recommended ? 'recommended' : 'passes') : 'open';
      return passes === 'no'
        ? say`${name}: does not pass.`
        : say`${name}: ${words(stands)}, ${verdictSign(verdict)}.`;
    }
    const { stage, check } = dropped;
    return say`${name}: dropped at ${words(STAGE_WORDS[stage].title.toLowerCase())} by ${words(CHECK_WORDS[check].name)}.`;
  });
  return items.length === 0 ? [] : [heading(2, say`Every arrangement`), list(items)];
}
