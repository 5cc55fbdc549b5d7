import type { Decision } from '../../rules/decision.ts';
import { type Block, heading, paragraph } from '../blocks/block.ts';
import { enumerate, number, say, words } from '../blocks/inline.ts';
import { arrangementAt } from '../checks-at.ts';
import { CLEARANCE_WORDS } from '../wording/arrangement.ts';

/** What the clearance additions cost once the rotary is off again. */
export function laterCost(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined || at.arrangement.clearance.length === 0) return [];
  const added = enumerate(at.arrangement.clearance.map((kind) => words(CLEARANCE_WORDS[kind])));
  const title = heading(2, say`What the clearance costs later`);
  if (at.arrangement.later === null) {
    return [title, paragraph(say`Added: ${added}. What it costs with the rotary off is not known.`)];
  }
  const path = [...at.path, 'later'];
  const raised = number([...path, 'raised'], 'mm');
  const subplate = number([...path, 'subplate'], 'mm', {
    ifNull: 'a thickness that is not known',
  });
  const price = number([...path, 'price'], 'money', {
    ifNull: 'a price to be asked for',
  });
  const later =
    at.arrangement.later.subplate === 0
      ? say`the shortest tool still comes down far enough for work in a vise.`
      : say`work in a vise then needs a subplate or risers of ${subplate} under it, so that the shortest tool comes down
          to it, at ${price}.`;
  return [
    title,
    paragraph(
      say`Added: ${added}. It raises the spindle nose above the table by ${raised} at both ends of its travel and adds
        no travel, so with the rotary off the nose stays that much higher: ${later}`,
    ),
  ];
}
