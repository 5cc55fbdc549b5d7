import { isTextView, missLines, TEXT_VIEWS } from '../../report/screen-lines.ts';
import type { Decision } from '../../rules/decision.ts';
import { noResultYet } from '../../session/step.ts';
import { wrapped } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';
import { comparedNow } from '../state/act.ts';
import { ready } from '../state/not-yet.ts';
import type { Ui } from '../state/ui.ts';
import { VIEW_WORDS } from '../state/view-words.ts';
import { checkListRows } from './check-list.ts';
import { comparisonRows } from './comparison.ts';
import type { Context } from './context.ts';
import { listFrame } from './lists.ts';
import { findRow } from './question.ts';
import { scrolledFrame } from './scrolled.ts';
import { type Block, textBlock } from './stack.ts';
import { toldRows } from './told.ts';
import { tonedRow } from './toned.ts';
import { written } from './written.ts';

const WORKING: readonly Row[] = [row('This is being worked out.', 'quiet')];

/** The result, in one of its views. */
export function resultFrame(ui: Ui, context: Context): readonly Row[] {
  const { world } = context;
  const { title } = VIEW_WORDS[ui.view];
  if (ui.view === 'papers' || ui.view === 'views') return menuFrame({ ...ui, view: ui.view }, context);
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
        lead: isWorking ? 'This is being worked out.' : lead,
        below: [],
        typed: ui.over?.kind === 'find' ? findRow(ui, context) : null,
      },
      context,
    );
  }
  const rows = [...toldRows(ui, context), ...bodyRows(ui, context)];
  return scrolledFrame(ui, whatIfTitle(ui, title), rows, context);
}

/** Whoever looks at the result of what is tried sees that it is none yet. */
const whatIfTitle = ({ session }: Ui, title: string): string =>
  session.trial === null ? title : `What if: ${title.charAt(0).toLowerCase()}${title.slice(1)}`;

function bodyRows(ui: Ui, { world, width, ascii }: Context): readonly Row[] {
  const { kept } = ui.session;
  const decision = ready(() => world.decision(kept));
  if (decision === undefined) return WORKING;
  if (decision === null) return wrapped(noResultYet(kept, world), width).map((line) => row(line));
  const look = { width, ascii };
  switch (ui.view) {
    case 'why':
      return textOnce(decision, look, 'why', () => checkListRows(decision, width, ascii));
    case 'why-not': {
      const id = ui.looked ?? '';
      const full = ready(() => world.decisionWith(kept, id));
      if (full === undefined || full === null) return WORKING;
      return textOnce(full, look, `why not ${id}`, () =>
        missLines(full, id, { ...look, drawn: true }).map(tonedRow),
      );
    }
    case 'compare': {
      const every = ready(() => world.everyArrangement(kept));
      const ids = ready(() => comparedNow(ui, world));
      if (every === undefined || every === null || ids === undefined) return WORKING;
      return comparisonRows(every, ids, width, ascii);
    }
    case 'ranges': {
      const whole = ready(() => world.decisionWithRanges(kept));
      if (whole === undefined || whole === null) return WORKING;
      return textOnce(whole, look, 'ranges', () => TEXT_VIEWS.ranges(whole, look).map(tonedRow));
    }
    default: {
      const { view } = ui;
      if (!isTextView(view)) return [];
      return textOnce(decision, look, view, () =>
        TEXT_VIEWS[view](decision, { ...look, drawn: true }).map(tonedRow),
      );
    }
  }
}

/** The text of a decision as it was laid out last: whoever scrolls asks for the same one at every key. */
const texts = new WeakMap<Decision, { readonly key: string; readonly rows: readonly Row[] }>();

function textOnce(
  decision: Decision,
  { width, ascii }: { readonly width: number; readonly ascii: boolean },
  what: string,
  lay: () => readonly Row[],
): readonly Row[] {
  const key = `${width} ${ascii} ${what}`;
  const known = texts.get(decision);
  if (known?.key === key) return known.rows;
  const rows = lay();
  texts.set(decision, { key, rows });
  return rows;
}

const LEADS = {
  papers: 'Each asks where to write. Nothing is replaced without asking.',
  views: 'Each has a letter of its own, which works in every view.',
} as const;

const menuFrame = (ui: Ui & { readonly view: keyof typeof LEADS }, context: Context): readonly Row[] =>
  listFrame(
    ui,
    {
      title: VIEW_WORDS[ui.view].title,
      right: '',
      lead: LEADS[ui.view],
      below: saidBlocks(ui, context),
      typed: null,
    },
    context,
  );

const saidBlocks = ({ session, said }: Ui, { width, ascii }: Context): readonly Block[] => {
  const words =
    said ??
    (session.note?.kind === 'said'
      ? session.note.words
      : session.note?.kind === 'error'
        ? session.note.why
        : null);
  const tone = said === null && session.note?.kind === 'error' ? 'error' : 'strong';
  return [textBlock(written(words ?? '', ascii), width, 3, 3, tone)];
};
