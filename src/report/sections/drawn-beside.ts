import type { Decision } from '../../rules/decision.ts';
import { type Block, figureBlock, paragraph } from '../blocks/block.ts';
import { say, verdictSign, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { checkPart } from '../check-part.ts';
import type { Explanation } from '../figures/explanations.ts';
import { CHECK_WORDS } from '../wording/checks.ts';

/** A figure behind a sentence that says which check it shows, and how that stands. */
export function drawnBeside(
  decision: Decision,
  { check, figure, isMeasured }: Explanation,
): readonly Block[] {
  const name = words(CHECK_WORDS[check.result.check].name);
  const part = checkPart(decision, check);
  const where = part === null ? [] : say` at ${part}`;
  const { need, have } = checkNumbers(check);
  const sentence = isMeasured
    ? say`To scale, ${name}${where}: ${need} needed, ${have} there, ${verdictSign(check.result.verdict)}.`
    : say`To scale, as far as it is known; it shows among others ${name}.`;
  return [paragraph(sentence), ...figureBlock(figure)];
}
