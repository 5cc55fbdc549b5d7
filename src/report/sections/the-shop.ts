import type { Decision } from '../../rules/decision.ts';
import { type Block, figureBlock, heading, paragraph, table } from '../blocks/block.ts';
import { say, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { arrangementAt, type CheckAt, firstOfEach, ofCoveredParts, worstFirst } from '../checks-at.ts';
import { bayPlan } from '../figures/bay-plan.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { sentenceCase } from '../wording/sentence-case.ts';

/** Whether the recommendation can be brought in, stood, supplied and lifted: each check of the shop once, the worst first. */
export function theShop(decision: Decision): readonly Block[] {
  const at = arrangementAt(decision, decision.recommended);
  if (at === undefined) return [];
  const shop = firstOfEach(worstFirst(ofCoveredParts(at)).filter(({ result }) => result.stage === 'shop'));
  if (shop.length === 0) return [];
  return [
    heading(2, say`Does the shop take it?`),
    paragraph(
      say`Where a check is open, ask whom it names before anything is ordered. Rigging, floors and electrics are decided by
        local code and the licensed trades.`,
    ),
    table(
      [
        [say`Check`, 'left'],
        [say`Verdict`, 'left'],
        [say`Needed`, 'right'],
        [say`There is`, 'right'],
        [say`Left over`, 'right'],
      ],
      shop.map(row),
    ),
    ...figureBlock(bayPlan(decision, at)),
  ];
}

function row(at: CheckAt) {
  const { result } = at;
  const { need, have, margin } = checkNumbers(at);
  const sign = verdictSign(result.verdict);
  return [
    [words(sentenceCase(CHECK_WORDS[result.check].name))],
    result.advisory ? say`${sign}, to be asked` : [sign],
    need,
    have,
    margin,
  ];
}
