import { arrangementRows, type CheckRow, checkRows } from '../../report/arrangement-rows.ts';
import { explanations } from '../../report/figures/explanations.ts';
import { figureRows } from '../../report/figures/figure-rows.ts';
import { marginsChart } from '../../report/figures/margins-chart.ts';
import { picturedArrangement } from '../../report/figures/pictured.ts';
import type { Decision } from '../../rules/decision.ts';
import { padded, widthOf, wrapped } from '../look/cells.ts';
import { EMPTY, type Row, row, type Span, type Tone } from '../look/row.ts';

/** What is looked at where nothing is recommended, and why it is that one. */
const INSTEAD: Readonly<Record<Decision['outcome'], string | null>> = {
  recommended: null,
  open: 'Nothing is recommended yet. This is the first of those that may still win, and how its checks stand.',
  none: 'Nothing is recommended, because nothing passes. This is what came nearest, and how its checks stand.',
};

/**
 * Every check of the recommendation with a bar for its margin, what is measured in a picture drawn below it; without one, of the
 * first that may win, and says so.
 */
export function checkListRows(decision: Decision, width: number, ascii: boolean): readonly Row[] {
  const at = picturedArrangement(decision);
  if (at === undefined) return [row('There is no arrangement to look at.')];
  const { id } = at.arrangement;
  const name = arrangementRows(decision, ascii).find((each) => each.id === id)?.name ?? id;
  const rows = checkRows(decision, id, ascii);
  const [held, others] = [rows.filter((each) => each.held), rows.filter((each) => !each.held)];
  const text = (words: string, tone: Tone): readonly Row[] =>
    wrapped(words, width).map((line) => row(line, tone));
  const section = (title: string, some: readonly CheckRow[]): readonly Row[] =>
    some.length === 0
      ? []
      : [
          ...text(title, 'strong'),
          ...some.flatMap((each) => [
            ...checkRowsOf(each, width),
            ...apart(drawn(each.path).map((line) => row(line))),
          ]),
          EMPTY,
        ];
  const drawn = explanations(decision, id, { width, ascii });
  const chart = marginsChart(decision, at);
  const instead = INSTEAD[decision.outcome];
  return [
    ...(instead === null ? [] : [...text(instead, 'strong'), EMPTY]),
    ...text(
      'The bar is the margin as a share of what is needed: right of the line is left over, left of it is missing. A full bar is as much again as is needed.',
      'quiet',
    ),
    EMPTY,
    ...section(`${name}, and the parts that it holds`, held),
    ...section('Parts that it does not hold, or that are open', others),
    // each has a bar above: all of them beside each other come last
    ...apart(chart === null ? [] : figureRows(chart, decision, { width, ascii }).map((line) => row(line))),
  ];
}

/** A picture with room above and below it. */
const apart = (rows: readonly Row[]): readonly Row[] => (rows.length === 0 ? [] : [EMPTY, ...rows, EMPTY]);

const BAR_LEFT = 4;
const BAR_RIGHT = 12;
const SIGNS = { holds: '✓ holds', 'holds if': '~ holds if', open: '? open', fails: '✗ fails' } as const;
const VERDICT_WIDTH = 11;

/** Its name, verdict and bar; then what is needed, what there is, what is left over. */
function checkRowsOf(check: CheckRow, width: number): readonly Row[] {
  const bar = barOf(check.share);
  const room = Math.max(10, width - VERDICT_WIDTH - widthOf(bar) - 1);
  const [name = '', ...more] = wrapped(check.name, room);
  const first: readonly Span[] = [
    { text: `${padded(name, room)} `, tone: 'strong' },
    { text: padded(SIGNS[check.verdict], VERDICT_WIDTH), tone: check.verdict },
    { text: bar, tone: check.verdict },
  ];
  const numbers = `needed ${check.need}, there is ${check.have}, margin ${check.margin}`;
  return [
    { spans: first },
    ...more.map((line) => row(line, 'strong')),
    ...wrapped(numbers, Math.max(10, width - 4)).map((line) => row(`    ${line}`)),
  ];
}

/** A margin of a half: '    │██████      '. */
function barOf(share: number | null): string {
  if (share === null) return `${' '.repeat(BAR_LEFT)}│${' '.repeat(BAR_RIGHT)}`;
  const missing = share < 0 ? Math.max(1, Math.round(Math.min(1, -share) * BAR_LEFT)) : 0;
  const left = share > 0 ? Math.max(1, Math.round(Math.min(1, share) * BAR_RIGHT)) : 0;
  return `${'▓'.repeat(missing).padStart(BAR_LEFT)}│${'█'.repeat(left).padEnd(BAR_RIGHT)}`;
}
