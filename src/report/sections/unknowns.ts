import type { Decision, Unknown } from '../../rules/decision.ts';
import { type Block, type Cell, details, heading, list, paragraph, table } from '../blocks/block.ts';
import { enumerate, type Inline, say, strong, words } from '../blocks/inline.ts';
import { ownerOf, valueName, valueTitle } from '../value-name.ts';
import { isKind } from '../value-words.ts';
import { CHECK_WORDS } from '../wording/checks.ts';

const WHOM: Readonly<Record<Unknown['ask'], string>> = {
  you: 'you: measure it or look it up',
  seller: 'the seller, in writing',
};

/** What is not known, what of it decides, and whom to ask. */
export function unknowns(decision: Decision): readonly Block[] {
  const title = heading(2, say`What is not known yet`);
  if (decision.unknowns.length === 0) {
    return [title, paragraph(say`Nothing that the decision rests on is unknown.`)];
  }
  return [
    title,
    ...group(
      decision,
      say`These decide. Measure them, look them up or settle them first:`,
      ({ decides, ask }) => decides && ask === 'you',
    ),
    ...group(
      decision,
      say`These decide too. Ask the seller, in writing:`,
      ({ decides, ask }) => decides && ask === 'seller',
    ),
    ...group(
      decision,
      say`Not known to you, but they do not decide:`,
      ({ decides, ask }) => !decides && ask === 'you',
    ),
    ...group(
      decision,
      say`For the seller to say in writing, though they do not decide:`,
      ({ decides, ask }) => !decides && ask === 'seller',
    ),
  ];
}

/** The unknowns of one kind, those of the same part or row on one line. */
function group(
  decision: Decision,
  lead: readonly Inline[],
  wanted: (unknown: Unknown) => boolean,
): readonly Block[] {
  const lines = new Map<string, { owner: readonly Inline[] | null; values: (readonly Inline[])[] }>();
  decision.unknowns.forEach((unknown, index) => {
    if (!wanted(unknown)) return;
    const at = ['unknowns', index, 'answer'];
    const owner = ownerOf(decision, unknown.answer, at);
    const line = lines.get(owner?.id ?? '') ?? { owner: owner?.name ?? null, values: [] };
    line.values.push(
      owner === null ? valueName(decision, unknown.answer, at) : valueTitle(unknown.answer, at),
    );
    lines.set(owner?.id ?? '', line);
  });
  if (lines.size === 0) return [];
  const items = [...lines.values()].map(({ owner, values }) =>
    owner === null ? say`${enumerate(values)}` : say`${strong(owner)}: ${enumerate(values)}`,
  );
  return [paragraph(lead), list(items)];
}

/** Each unknown with the checks that it leaves open. */
export function unknownsInFull(decision: Decision): readonly Block[] {
  if (decision.unknowns.length === 0) return [];
  const rows = decision.unknowns.map((unknown, index): readonly Cell[] => [
    valueName(decision, unknown.answer, ['unknowns', index, 'answer']),
    [words(unknown.decides ? 'yes' : 'no')],
    [words(unknown.ask === 'you' && isKind(unknown.answer) ? 'you: say which' : WHOM[unknown.ask])],
    enumerate(unknown.checks.map((check) => words(CHECK_WORDS[check].name))),
  ]);
  return [
    details(say`Each of them, with the checks that it leaves open`, [
      table(
        [
          [say`Not known`, 'left'],
          [say`Decides`, 'left'],
          [say`Whom to ask`, 'left'],
          [say`Leaves open`, 'left'],
        ],
        rows,
      ),
    ]),
  ];
}
