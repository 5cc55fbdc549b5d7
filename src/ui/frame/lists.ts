import type { Screen } from '../../session/screen.ts';
import { type Row, row } from '../look/row.ts';
import type { Ui } from '../state/ui.ts';
import { type Context, ROOMY_ROWS } from './context.ts';
import { feedbackBlocks, feedbackOf } from './feedback.ts';
import { keyLine, titleRow } from './foot.ts';
import { aboutBelow, listBlock, shownItems } from './listing.ts';
import { findRow, typedRow } from './question.ts';
import { type Block, gap, rowsBlock, stacked, textBlock } from './stack.ts';
import { written } from './written.ts';

/** A screen that is a title, a sentence or two, and a list. */
export interface ListScreen {
  readonly title: string;
  readonly right: string;
  readonly lead: string;
  /** stands under the list: what the last key brought about */
  readonly below: readonly Block[];
  /** what is typed over the list */
  readonly typed: Row | null;
}

export function listFrame(ui: Ui, shown: ListScreen, context: Context): readonly Row[] {
  const { here, width, height } = context;
  const items = shownItems(ui, context) ?? [];
  const typed: readonly Block[] = shown.typed === null ? [] : [rowsBlock([shown.typed], 0)];
  return stacked(
    [
      rowsBlock([titleRow(shown.title, shown.right, width)], 0),
      rowsBlock([row('─'.repeat(width), 'quiet')], 1, 0),
      textBlock(shown.lead, width, 5, 3),
      gap(9),
      ...typed,
      listBlock({ items, mark: Math.min(ui.mark, items.length - 1), chosen: null, ordered: false, width }, 2),
      textBlock(aboutBelow(items, ui.mark, width), width, 6, 1, 'quiet'),
      gap(9),
      ...shown.below,
    ],
    [keyLine(here, width)],
    width,
    height,
  );
}

/** The list of parts, the review, and what is asked with yes or no. */
export function placeFrame(ui: Ui, screen: Screen, context: Context): readonly Row[] {
  const roomy = context.height >= ROOMY_ROWS;
  const below = feedbackBlocks(feedbackOf(ui, screen, context, roomy), roomy);
  const typed = ui.over?.kind === 'find' ? findRow(ui, context) : null;
  const list = (title: string, lead: string, right = ''): readonly Row[] =>
    listFrame(ui, { title, right, lead, below, typed }, context);
  switch (screen.kind) {
    case 'parts':
      return list(
        'Parts',
        'Enter on a part shows its answers, to be changed. A table from a spreadsheet can be pasted here.',
        count(screen.parts.length, 'part'),
      );
    case 'review':
      return list(
        screen.part === null ? 'Review' : `Review: ${screen.part}`,
        'Enter on an answer asks its question again, and comes back here.',
        reviewState(screen),
      );
    case 'remove':
      return list(
        'Remove a part',
        `Take out ${screen.name}? Its ${count(screen.answered, 'answer')} would be gone.`,
      );
    case 'overwrite':
      return list('The file is there already', `${screen.file} is there already. Replace it?`);
    case 'next':
      return nextFrame(screen.accepted !== null, context, below);
    case 'file':
      return fileFrame(ui, screen, context, below);
    default:
      return list('', '');
  }
}

/** Between an answer, or going on with a saved interview, and the next question. */
function nextFrame(
  isAnswered: boolean,
  { width, height, here, unsaved }: Context,
  below: readonly Block[],
): readonly Row[] {
  const saved = isAnswered && unsaved === null ? 'Your answer is saved. ' : '';
  return stacked(
    [
      rowsBlock([titleRow('What to ask next', '', width)], 0),
      rowsBlock([row('─'.repeat(width), 'quiet')], 8, 0),
      textBlock(`${saved}What to ask next is being worked out … Esc goes back.`, width, 1, 2, 'strong'),
      gap(9),
      ...below,
    ],
    [keyLine(here, width)],
    width,
    height,
  );
}

function reviewState({ open, lines }: Screen & { kind: 'review' }): string {
  const skipped = lines.filter(({ state }) => state === 'not asked').length;
  if (skipped > 0) return `${open} to ask, ${skipped} not asked`;
  return open === 0 ? 'every question is answered' : `${open} open`;
}

function fileFrame(
  ui: Ui,
  screen: Screen & { kind: 'file' },
  context: Context,
  below: readonly Block[],
): readonly Row[] {
  const { width, height, here, sessionFile } = context;
  return stacked(
    [
      rowsBlock([titleRow(`Write the ${screen.what.replaceAll('-', ' ')}`, '', width)], 0),
      rowsBlock([row('─'.repeat(width), 'quiet')], 8, 0),
      textBlock(
        `Where to? Enter alone writes ${screen.file} into this folder. A file that is there already is not replaced without asking.`,
        width,
        4,
      ),
      gap(9),
      rowsBlock([typedRow('File ', ui, context)], 0),
      gap(9),
      ...below,
      textBlock(`The interview itself is kept in ${sessionFile}.`, width, 7, 0, 'quiet'),
    ],
    [keyLine(here, width)],
    width,
    height,
  );
}

/** How to begin. */
export function startFrame(ui: Ui, screen: Screen, context: Context): readonly Row[] {
  const { setting } = context.world;
  const saved =
    screen.kind === 'resume'
      ? ` There is a saved interview with ${count(screen.answered, 'answer')}${screen.parts.length === 0 ? '' : ` about ${screen.parts.join(', ')}`}.`
      : '';
  return listFrame(
    ui,
    {
      title: 'fivesides',
      right: count(setting.offer.machines.length, 'machine'),
      lead: `From your parts to a five-axis arrangement, with every number shown.${saved}`,
      below: said(ui, context),
      typed: null,
    },
    context,
  );
}

/** Which answers file to go on from. */
export function openFrame(ui: Ui, context: Context): readonly Row[] {
  const { width, height, here } = context;
  const error = ui.over?.kind === 'open' ? ui.over.error : null;
  return stacked(
    [
      rowsBlock([titleRow('Go on from an answers file', '', width)], 0),
      rowsBlock([row('─'.repeat(width), 'quiet')], 8, 0),
      textBlock(
        'Type the name of the file, as seen from the folder that the program was started in.',
        width,
        4,
      ),
      gap(9),
      rowsBlock([typedRow('File ', ui, context)], 0),
      gap(9),
      textBlock(written(error ?? '', context.ascii), width, 2, 1, 'error'),
    ],
    [keyLine(here, width)],
    width,
    height,
  );
}

/** All questions, to go to one. */
export function jumpFrame(ui: Ui, context: Context): readonly Row[] {
  const items = shownItems(ui, context) ?? [];
  return listFrame(
    ui,
    {
      title: 'Jump to a question',
      right: count(items.length, 'question'),
      lead: 'Type words of its title, of the part, or of how it stands: open, not sure, answered.',
      below: said(ui, context),
      typed: typedRow('Jump to ', ui, context),
    },
    context,
  );
}

/** The same, to try another answer to one. */
export const tryFrame = (ui: Ui, context: Context): readonly Row[] =>
  listFrame(
    ui,
    {
      title: 'What if: which answer?',
      right: count((shownItems(ui, context) ?? []).length, 'question'),
      lead: 'Type words of its title or of the part. The answers of the interview stay as they are until you keep what is tried.',
      below: said(ui, context),
      typed: typedRow('What if ', ui, context),
    },
    context,
  );

const said = (ui: Ui, { width, ascii }: Context): readonly Block[] => [
  textBlock(written(ui.said ?? '', ascii), width, 3, 2, 'strong'),
];

const count = (number: number, noun: string): string => `${number} ${noun}${number === 1 ? '' : 's'}`;
