import type { CautionId } from '../../rules/cautions.ts';
import type { Decision } from '../../rules/decision.ts';
import { type Block, details, heading, list, paragraph } from '../blocks/block.ts';
import { say, standard, strong, words } from '../blocks/inline.ts';
import { CAUTION_ASKS, CAUTION_WORDS, SAFETY_DOCUMENTS } from '../wording/cautions.ts';

/** These stand under every result, whatever the rules found. */
const ALWAYS: readonly CautionId[] = ['forces-are-estimates', 'licensed-trades-decide'];

/** What can hurt someone, and who decides about it. */
export function cautions(decision: Decision): readonly Block[] {
  const ids = [...new Set([...decision.cautions, ...ALWAYS])];
  return [
    heading(2, say`Cautions`),
    paragraph(say`Each of them defers to local code and to licensed practice, and names whom to ask.`),
    list(ids.map((id) => say`${words(CAUTION_WORDS[id])} Ask: ${words(CAUTION_ASKS[id])}.`)),
  ];
}

/** The documents that a buyer should have heard of. */
export function documents(_decision: Decision): readonly Block[] {
  return [
    heading(2, say`To read before ordering`),
    paragraph(
      say`What to ask the sellers stands on their quote sheets. These documents say what else to look for:`,
    ),
    details(say`Safety documents, and what each tells a buyer`, [
      list(
        SAFETY_DOCUMENTS.map(
          ({ name, says, fromMemory }) =>
            say`${strong([standard(name)])}: ${words(says)}${words(fromMemory ? ' (title and scope from memory)' : '')}.`,
        ),
      ),
      paragraph(
        say`They are named so that they can be asked for. What applies in this shop is decided by local code and
          licensed practice.`,
      ),
    ]),
  ];
}
