import { becauseLine, toAskWords } from '../../report/asking-words.ts';
import type { QuestionScreen, Screen } from '../../session/screen.ts';
import { cut, graphemes, widthOf } from '../look/cells.ts';
import type { Row } from '../look/row.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { ROOMY_ROWS } from './context.ts';
import { feedbackBlocks, feedbackOf } from './feedback.ts';
import { keyLine, progressRow, titleRow } from './foot.ts';
import { aboutBelow, listBlock, shownItems } from './listing.ts';
import { type Block, gap, rowsBlock, stacked, textBlock } from './stack.ts';

/** One question: where it stands, what is asked, what can be answered, what that does. */
export function questionFrame(ui: Ui, screen: QuestionScreen & Screen, context: Context): readonly Row[] {
  const { width, height, here } = context;
  const { progress, input } = screen;
  const place = screen.part === null ? screen.section.title : `${screen.part}: ${screen.section.title}`;
  const items = shownItems(ui, context);
  const roomy = height >= ROOMY_ROWS;
  const several = input.kind === 'list' || input.kind === 'order';
  const answer: readonly Block[] =
    items === null
      ? [rowsBlock(fieldRows(ui, screen, context), 0)]
      : [
          listBlock(
            {
              items,
              mark: ui.mark,
              chosen: several ? ui.chosen : null,
              ordered: input.kind === 'order',
              width,
            },
            2,
          ),
          gap(9),
          textBlock(aboutBelow(items, ui.mark, width), width, 6, 1, 'quiet'),
        ];
  return stacked(
    [
      rowsBlock(
        [titleRow(ui.session.trial === null ? place : `What if: ${place}`, progressWords(progress), width)],
        0,
      ),
      rowsBlock([progressRow(shareDone(progress), width)], 8, 0),
      textBlock(screen.ask, width, 1, 3, 'strong'),
      textBlock(hintOf(screen), width, 5, 2, 'quiet'),
      textBlock(screen.because === null ? '' : becauseLine(screen.because), width, 4, 1, 'plain'),
      gap(9),
      ...(ui.over?.kind === 'find' ? [rowsBlock([findRow(ui, context)], 0)] : []),
      ...answer,
      ...(items === null ? [textBlock(currentWords(screen), width, 7, 1, 'quiet')] : []),
      gap(9),
      ...feedbackBlocks(feedbackOf(ui, screen, context, roomy), roomy),
    ],
    [keyLine(here, width)],
    width,
    height,
  );
}

/** How far it is: the place among all questions, or how much there is still to ask. */
function progressWords({ number, of, open, needed }: QuestionScreen['progress']): string {
  if (needed !== null) return `${needed.answered} answered, ${toAskWords(needed)}`;
  return `question ${number}${of === null ? '' : ` of ${of}`}, ${open} open`;
}

function shareDone({ number, of, needed }: QuestionScreen['progress']): number {
  if (needed === null) return of === null ? 0 : number / of;
  const all = needed.answered + (needed.toAsk ?? 0);
  return of === null || needed.toAsk === null || all === 0 ? 0 : needed.answered / all;
}

/** What is typed, with the place of the next character, and the unit of a number without one. */
function fieldRows(
  ui: Ui,
  { title, input }: { title: string; input: QuestionScreen['input'] },
  context: Context,
): readonly Row[] {
  const unit = input.kind === 'quantity' && input.bare !== '' ? ` (${input.bare})` : '';
  return [typedRow(`${title}${unit} `, ui, context)];
}

export const findRow = (ui: Ui, context: Context): Row => typedRow('Find ', ui, context);

/** A prompt and what is typed after it; of a long text the end is in sight. The caret is a cell turned round. */
export function typedRow(
  prompt: string,
  { field }: Pick<Ui, 'field'>,
  { width, color }: Pick<Context, 'width' | 'color'>,
): Row {
  const shown = cut(prompt, Math.max(4, Math.floor(width / 2)));
  const room = Math.max(2, width - widthOf(shown) - 3);
  const signs = graphemes(field.text);
  let from = 0;
  while (from < field.caret && widthOf(signs.slice(from, field.caret).join('')) > room) from += 1;
  const at = signs[field.caret] ?? ' ';
  return {
    spans: [
      { text: `${shown}❯ `, tone: 'strong' },
      { text: signs.slice(from, field.caret).join(''), tone: 'plain' },
      ...(color ? [] : [{ text: '▏', tone: 'plain' } as const]),
      { text: at, tone: 'marked' },
      { text: signs.slice(field.caret + 1).join(''), tone: 'plain' },
    ],
  };
}

/** What the question says, and how several rows are taken: by keys, not by typing. */
function hintOf({ hint, input }: QuestionScreen): string {
  if (input.kind === 'order') {
    return 'Highlight a row and press the digit of its place: 1 is the most important. Space moves it up by one. What stands below counts where those above are about level.';
  }
  return input.kind === 'list' ? `${hint} Space marks a row; Enter takes all that are marked.` : hint;
}

function currentWords({ current, notSure }: QuestionScreen): string {
  const unsure = `Not sure (Ctrl-N): ${notSure}.`;
  if (current === null) return unsure;
  const whose = current.from === 'usual' ? 'Usual answer' : 'Answer so far';
  return `${whose}: ${current.from === 'not sure' ? 'not sure' : current.words}; Enter keeps it. ${unsure}`;
}
