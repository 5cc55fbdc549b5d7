import type { Decision } from '../../rules/decision.ts';
import { type Block, type Cell, paragraph, table } from '../blocks/block.ts';
import { number, say, words } from '../blocks/inline.ts';
import type { Path } from '../blocks/path.ts';
import { type ArrangementAt, type CheckAt, tightestChecks } from '../checks-at.ts';
import { partName } from '../names.ts';
import { CHECK_WORDS } from '../wording/checks.ts';

const SHOWN = 3;

/** The checks with the least margin: where the choice would give way first. */
export function tightest(decision: Decision, at: ArrangementAt): readonly Block[] {
  const checks = tightestChecks(at, SHOWN);
  if (checks.length === 0) return [];
  return [
    paragraph(say`Where it is tightest:`),
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

function row(decision: Decision, { result, path }: CheckAt): readonly Cell[] {
  const at = (key: string): Path => [...path, key];
  const title = words(CHECK_WORDS[result.check].title);
  const margin = number(at('margin'), result.unit);
  const share = number(at('relativeMargin'), 'share');
  return [
    result.part === null ? [title] : say`${title}: ${partName(decision, result.part, at('part'))}`,
    [number(at('need'), result.unit)],
    [number(at('have'), result.unit)],
    say`${margin} (${share})`,
  ];
}
