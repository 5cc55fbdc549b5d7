import { type CheckRow, checkRows } from '../../report/arrangement-rows.ts';
import { missLines, overviewLines, stagesLines } from '../../report/screen-lines.ts';
import type { Decision } from '../../rules/decision.ts';
import { cut, padded, widthOf } from '../look/cells.ts';
import { type Row, row, type Span } from '../look/row.ts';
import { comparedNow } from '../state/act.ts';
import { ready } from '../state/not-yet.ts';
import type { Ui } from '../state/ui.ts';
import { comparisonRows } from './comparison.ts';
import type { Context } from './context.ts';
import { listFrame } from './lists.ts';
import { findRow } from './question.ts';
import { scrolledFrame } from './scrolled.ts';
import { tonedRow } from './toned.ts';

const TITLES = {
  overview: 'The answer',
  why: 'Why: every check, the tightest first',
  'why-not': 'Why not another one',
  compare: 'Side by side',
  stages: 'How it was decided',
  papers: 'Papers',
} as const;

const WORKING: readonly Row[] = [row('This is being worked out …', 'quiet')];

/** The result, in one of its views. */
export function resultFrame(ui: Ui, context: Context): readonly Row[] {
  const { world } = context;
  const title = TITLES[ui.view];
  if (ui.view === 'papers') return papersFrame(ui, context);
  const lists =
    (ui.view === 'why-not' && ui.looked === null) || (ui.view === 'compare' && ui.looked !== null);
  if (lists) {
    const isWorking = ready(() => world.everyArrangement(ui.session.kept)) === undefined;
    const lead =
      ui.view === 'compare'
        ? 'Enter takes an arrangement into the comparison, or out of it; three at most. Esc goes back.'
        : 'Arrangements that do not pass, and what dropped each. Enter shows what fails, and by how much.';
    return listFrame(
      ui,
      {
        title,
        right: '',
        lead: isWorking ? 'This is being worked out …' : lead,
        below: [],
        typed: ui.over?.kind === 'find' ? findRow(ui, context) : null,
      },
      context,
    );
  }
  return scrolledFrame(ui, title, bodyRows(ui, context), context);
}

function bodyRows(ui: Ui, { world, width, ascii }: Context): readonly Row[] {
  const { kept } = ui.session;
  const decision = ready(() => world.decision(kept));
  if (decision === undefined) return WORKING;
  if (decision === null) return [row('There is no result yet: a part needs a size first.')];
  const look = { width, ascii };
  switch (ui.view) {
    case 'why':
      return whyRows(decision, width, ascii);
    case 'stages':
      return stagesLines(decision, look).map(tonedRow);
    case 'why-not': {
      const id = ui.looked ?? '';
      const full = ready(() => world.decisionWith(kept, id));
      return full === undefined || full === null ? WORKING : missLines(full, id, look).map(tonedRow);
    }
    case 'compare': {
      const every = ready(() => world.everyArrangement(kept));
      const ids = ready(() => comparedNow(ui, world));
      if (every === undefined || every === null || ids === undefined) return WORKING;
      return comparisonRows(every, ids, width, ascii);
    }
    default:
      return overviewLines(decision, look).map(tonedRow);
  }
}

/** Every check of the recommendation with a bar for its margin; without one, of the first that may win. */
function whyRows(decision: Decision, width: number, ascii: boolean): readonly Row[] {
  const id = decision.recommended ?? decision.contenders[0] ?? decision.nearestMisses[0];
  if (id === undefined) return [row('There is no arrangement to look at.')];
  const rows = checkRows(decision, id, ascii);
  return [
    row(
      'The bar is the margin as a share of what is needed: to the right of the line is left over, to the left is',
      'quiet',
    ),
    row('missing. A full bar is as much again as is needed.', 'quiet'),
    row(''),
    ...rows.flatMap((each) => checkRowsOf(each, width)),
  ].map((each) => ({ ...each, spans: each.spans.map((span) => ({ ...span, text: cut(span.text, width) })) }));
}

const BAR_LEFT = 4;
const BAR_RIGHT = 12;
const SIGNS = { holds: '✓ holds', 'holds if': '~ holds if', open: '? open', fails: '✗ fails' } as const;
const VERDICT_WIDTH = 11;

/** Two rows a check: its name, verdict and bar; what is needed, what there is, what is left over. */
function checkRowsOf(check: CheckRow, width: number): readonly Row[] {
  const bar = barOf(check.share);
  const room = Math.max(10, width - VERDICT_WIDTH - widthOf(bar) - 1);
  const first: readonly Span[] = [
    { text: padded(check.name, room), tone: 'strong' },
    { text: padded(SIGNS[check.verdict], VERDICT_WIDTH), tone: check.verdict },
    { text: bar, tone: check.verdict },
  ];
  return [{ spans: first }, row(`    needed ${check.need}, there is ${check.have}, margin ${check.margin}`)];
}

/** Example: a margin of a half → '    │██████      ' */
export function barOf(share: number | null): string {
  if (share === null) return `${' '.repeat(BAR_LEFT)}│${' '.repeat(BAR_RIGHT)}`;
  const missing = share < 0 ? Math.max(1, Math.round(Math.min(1, -share) * BAR_LEFT)) : 0;
  const left = share > 0 ? Math.max(1, Math.round(Math.min(1, share) * BAR_RIGHT)) : 0;
  return `${'▓'.repeat(missing).padStart(BAR_LEFT)}│${'█'.repeat(left).padEnd(BAR_RIGHT)}`;
}

const papersFrame = (ui: Ui, context: Context): readonly Row[] =>
  listFrame(
    ui,
    {
      title: TITLES.papers,
      right: '',
      lead: 'Each asks where to write. Nothing is replaced without asking.',
      below: saidRows(ui),
      typed: null,
    },
    context,
  );

const saidRows = ({ session, said }: Ui): readonly Row[] => {
  const words =
    said ??
    (session.note?.kind === 'said'
      ? session.note.words
      : session.note?.kind === 'error'
        ? session.note.why
        : null);
  return words === null ? [] : [row(words, session.note?.kind === 'error' ? 'error' : 'strong')];
};
