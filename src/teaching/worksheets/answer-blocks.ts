import { type Block, list, paragraph } from '../../report/blocks/block.ts';
import { codeData, data, say, words } from '../../report/blocks/inline.ts';
import { at } from '../explained.ts';
import type { ChoiceCase, Choices } from '../rules/choices.ts';
import type { SheetFormula } from './sheet-formula.ts';

/** What is asked for: a number, a verdict, a word that is worked out, or what is found of a kind. */
export function endBlocks({
  compared,
  findings,
  choices,
}: Pick<SheetFormula, 'compared'> & {
  readonly findings: readonly ChoiceCase[] | undefined;
  readonly choices: Choices | undefined;
}): readonly Block[] {
  if (choices !== undefined) return choiceBlocks(choices);
  return findings === undefined ? [askedBlock(compared)] : findingBlocks(findings);
}

/** Which word is the answer, the first of which its comparison is so. */
const choiceBlocks = ({ cases, otherwise }: Choices): readonly Block[] => [
  ...cases.flatMap(({ comesTo }, index): readonly Block[] => [
    paragraph(say`The answer is ${words(comesTo)} where this is so:`),
    list([say`${codeData(at('findings', index, 'rule'))}: ${data(at('findings', index, 'words'))}`]),
  ]),
  paragraph(say`Else the answer is ${words(otherwise)}.`),
];

const askedBlock = (compared: SheetFormula['compared']): Block =>
  paragraph(
    compared === null
      ? say`Asked for: ${codeData(at('asked'))}.`
      : say`It holds where ${codeData(at('rule'))}; what is left is then not less than nothing.`,
  );

/** The rules of a kind, by what it comes to where one of them is so. */
function findingBlocks(findings: readonly ChoiceCase[]): readonly Block[] {
  const those = (comesTo: string): Block =>
    list(
      findings.flatMap((each, index) => {
        const own = at('findings', index);
        return each.comesTo === comesTo
          ? [say`${codeData([...own, 'rule'])}: ${data([...own, 'words'])}`]
          : [];
      }),
    );
  return [
    paragraph(say`It is ruled out where one of these is so:`),
    those('ruled out'),
    paragraph(say`Else it is possible, and no more, where one of these is so:`),
    those('possible'),
    paragraph(say`Else it suits.`),
  ];
}
