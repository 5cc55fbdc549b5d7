import { type Block, heading, list, paragraph, table } from '../blocks/block.ts';
import { data, type Inline, number, say, strong, words } from '../blocks/inline.ts';
import { MOST_NAMED } from '../changed.ts';
import { arrangementName } from '../names.ts';
import type { TriedDecision } from '../side-by-side.ts';
import { CHECK_WORDS } from '../wording/checks.ts';
import { answerTitle, measured, measureTitle } from './side-by-side.ts';

type Line = readonly Inline[];

/** What other answers change: the answer, the money, how many pass, and which are let through or dropped. */
export function whatIf(whole: TriedDecision): readonly Block[] {
  return [
    ...tried(whole),
    paragraph([strong(answer(whole))]),
    ...moneyTable(whole),
    paragraph(passing(whole)),
    ...changes(whole, 'letThrough', say`Let through:`),
    ...changes(whole, 'dropped', say`Dropped:`),
  ];
}

/** Answer by answer, as it was and as it is tried. */
function tried({ answersBeside }: TriedDecision): readonly Block[] {
  if (answersBeside.length === 0) return [paragraph(say`Every question is answered as in the interview.`)];
  return [
    list(
      answersBeside.map((answer, row) => {
        const at = (column: 0 | 1) => data(['answersBeside', row, 'words', column]);
        return say`${answerTitle(answer, row)}: ${at(1)} instead of ${at(0)}`;
      }),
    ),
  ];
}

function answer(whole: TriedDecision): Line {
  const { before, after } = whole;
  const was = nameIn(whole, 'before');
  const is = nameIn(whole, 'after');
  if (is !== null && was !== null) {
    return before.recommended === after.recommended
      ? say`${is} stays recommended.`
      : say`${is} is recommended instead of ${was}.`;
  }
  if (is !== null) {
    return before.outcome === 'open'
      ? say`${is} is recommended; before, it was open.`
      : say`${is} is recommended; before, none passed.`;
  }
  const now = after.outcome === 'open' ? say`It is open which one is best` : say`No arrangement passes`;
  if (was !== null) return say`${now}; before, ${was} was recommended.`;
  if (before.outcome === after.outcome) return say`${now}, as before.`;
  return before.outcome === 'open' ? say`${now}; before, it was open.` : say`${now}; before, none passed.`;
}

function nameIn(whole: TriedDecision, which: 'before' | 'after'): Line | null {
  const { recommended } = whole[which];
  return recommended === null ? null : arrangementName(whole, recommended, [which, 'recommended']);
}

const MONEY = ['price', 'payback', 'netPresentValue', 'coverage'] as const;

/** Of what is recommended before and with it; nothing where neither is. */
function moneyTable(whole: TriedDecision): readonly Block[] {
  const { before, after } = whole;
  if (before.recommended === null && after.recommended === null) return [];
  return [
    table(
      [
        [say`Of the recommended one`, 'left'],
        [say`Before`, 'right'],
        [say`With it`, 'right'],
      ],
      MONEY.map((measure) => [
        [words(measureTitle(measure))],
        [measured(whole, 0, measure)],
        [measured(whole, 1, measure)],
      ]),
    ),
  ];
}

function passing({ changed }: TriedDecision): Line {
  const at = (...keys: readonly string[]) => number(['changed', ...keys], '');
  const open =
    changed.passing.before.open + changed.passing.after.open === 0
      ? []
      : say`; open are ${at('passing', 'after', 'open')}, before ${at('passing', 'before', 'open')}`;
  const same =
    changed.letThrough.length + changed.dropped.length + changed.nowOpen + changed.nowCertain === 0;
  const end = same ? say`. None is let through or dropped.` : say`.`;
  return say`Of ${number(['after', 'count'], '')} arrangements ${at('passing', 'after', 'passes')} pass, before
    ${at('passing', 'before', 'passes')}${open}${end}`;
}

/** A handful by name, each with the check that drops it or dropped it; the rest counted. */
function changes(whole: TriedDecision, which: 'letThrough' | 'dropped', title: Line): readonly Block[] {
  const all = whole.changed[which];
  if (all.length === 0) return [];
  const named = all.slice(0, MOST_NAMED).map(({ id, by }, index): Line => {
    const name = arrangementName(whole, id, ['changed', which, index, 'id']);
    return by === null
      ? say`${name}`
      : which === 'dropped'
        ? say`${name}, by ${words(CHECK_WORDS[by.check].name)}`
        : say`${name}, dropped before by ${words(CHECK_WORDS[by.check].name)}`;
  });
  const rest = all.length > MOST_NAMED ? [say`and ${number(['changed', 'more', which], '')} more`] : [];
  return [paragraph(title), list([...named, ...rest])];
}

/** Stands over a paper of variants. */
export const variantsTitle = (): readonly Block[] => [
  heading(1, say`Five-axis arrangement: variants side by side`),
  paragraph(
    say`The answers of the interview beside other answers to the same questions, each with what is recommended then. It is an
      estimate and no approval.`,
  ),
];
