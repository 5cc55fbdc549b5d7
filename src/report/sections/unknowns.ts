import type { Decision, Unknown } from '../../rules/decision.ts';
import { type Block, type Cell, heading, list, paragraph, table } from '../blocks/block.ts';
import { enumerate, number, say, words } from '../blocks/inline.ts';
import { valueName } from '../value-name.ts';
import { valueUnit } from '../value-words.ts';
import { CHECK_WORDS } from '../wording/checks.ts';

const WHOM: Readonly<Record<Unknown['ask'], string>> = {
  you: 'you: measure it or look it up',
  seller: 'the seller, in writing',
};

/** What is not known, whether it decides, and whom to ask; how far an answer may be off without harm. */
export function unknowns(decision: Decision): readonly Block[] {
  const row = (unknown: Unknown, index: number): readonly Cell[] => [
    valueName(decision, unknown.answer, ['unknowns', index, 'answer']),
    [words(unknown.decides ? 'yes' : 'no')],
    [words(WHOM[unknown.ask])],
    enumerate(unknown.checks.map((check) => words(CHECK_WORDS[check].name))),
  ];
  const all = decision.unknowns.map((unknown, index) => ({
    decides: unknown.decides,
    cells: row(unknown, index),
  }));
  const rows = [...all.filter(({ decides }) => decides), ...all.filter(({ decides }) => !decides)].map(
    ({ cells }) => cells,
  );
  const known =
    rows.length === 0
      ? paragraph(say`Nothing that the decision rests on is unknown.`)
      : table(
          [
            [say`Not known`, 'left'],
            [say`Decides`, 'left'],
            [say`Whom to ask`, 'left'],
            [say`Leaves open`, 'left'],
          ],
          rows,
        );
  return [heading(2, say`What is not known yet`), known, ...stability(decision)];
}

function stability(decision: Decision): readonly Block[] {
  if (decision.stability.length === 0) return [];
  const items = decision.stability.map(({ answer }, index) => {
    const unit = valueUnit(answer);
    const low = number(['stability', index, 'low'], unit);
    const high = number(['stability', index, 'high'], unit);
    return say`${valueName(decision, answer, ['stability', index, 'answer'])}: from ${low} to ${high}`;
  });
  return [paragraph(say`Around these answers the recommendation stays the same:`), list(items)];
}
