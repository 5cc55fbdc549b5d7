import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, paragraph, table } from '../blocks/block.ts';
import { joined, number, say, words } from '../blocks/inline.ts';
import { checkNumbers } from '../check-numbers.ts';
import { checkPart } from '../check-part.ts';
import { type ArrangementAt, type CheckAt, tightestChecks } from '../checks-at.ts';
import { qualifier } from '../qualifier.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { sentenceCase } from '../wording/sentence-case.ts';

const SHOWN = 3;

/** The checks with the least margin: where the choice would give way first. */
export function tightest(decision: Decision, at: ArrangementAt): readonly Block[] {
  const checks = tightestChecks(at, SHOWN);
  if (checks.length === 0) return [];
  return [
    paragraph(say`Of what holds as it is, this is tightest:`),
    table(
      [
        [say`Check`, 'left'],
        [say`Needed`, 'right'],
        [say`There is`, 'right'],
        [say`Margin`, 'right'],
      ],
      checks.map((each) => row(decision, each)),
    ),
  ];
}

function row(decision: Decision, each: CheckAt): readonly Cell[] {
  const { result, path } = each;
  const { need, have, margin } = checkNumbers(each);
  const name = words(sentenceCase(CHECK_WORDS[result.check].name));
  const counted = qualifier(decision, each);
  const part = checkPart(decision, each);
  const brackets = joined(
    [part, counted === null ? null : words(counted)].filter((each) => each !== null),
    ', ',
  );
  return [
    brackets.length === 0 ? [name] : say`${name} (${brackets})`,
    need,
    have,
    say`${margin} (${number([...path, 'relativeMargin'], 'share')})`,
  ];
}
