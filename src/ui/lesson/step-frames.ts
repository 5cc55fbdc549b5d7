import {
  askLines,
  feedbackLines,
  givenLines,
  hintLines,
  type LessonLook,
  readNext,
  revealedLines,
} from '../../teaching/lessons/lesson-words.ts';
import { unitTyped } from '../../teaching/lessons/read-prediction.ts';
import { FULL_POINTS, LESSON_START, scoreOf } from '../../teaching/lessons/run-lesson.ts';
import { progressRow, titleRow } from '../frame/foot.ts';
import { listBlock } from '../frame/listing.ts';
import { typedRow } from '../frame/question.ts';
import { scrolledText } from '../frame/scrolled.ts';
import { type Block, gap, rowsBlock, stacked, textBlock } from '../frame/stack.ts';
import { tonedRow } from '../frame/toned.ts';
import { allWritten, written } from '../frame/written.ts';
import { wrapped } from '../look/cells.ts';
import { type Row, row, type Tone } from '../look/row.ts';
import type { LessonContext } from './lesson-frame.ts';
import { lessonList, shownStep } from './lesson-here.ts';
import type { Alone, LessonUi, OpenedLesson } from './lesson-ui.ts';

const lookOf = ({ width, ascii, units }: LessonContext): LessonLook => ({ width, ascii, units });

const rowsOf = (lines: readonly string[], tone: Tone = 'plain'): readonly Row[] =>
  lines.map((line) => (tone === 'plain' ? tonedRow(line) : row(line, tone)));

function headRows(
  { ready }: OpenedLesson,
  { run }: Alone,
  index: number,
  { width, ascii }: LessonContext,
): readonly Row[] {
  const { points, of } = scoreOf(run);
  const all = ready.lesson.steps.length;
  const right = `step ${index + 1} of ${all}${of === 0 ? '' : `, ${points} of ${of} points`}`;
  return [
    titleRow(written(ready.lesson.title, ascii), right, width),
    progressRow(run.scores.length / all, width),
  ];
}

/** The question of a step, what is given, and where the prediction is typed or chosen. */
export function predictFrame(
  ui: LessonUi,
  opened: OpenedLesson,
  goes: Alone,
  context: LessonContext,
): readonly Row[] {
  const { width, height, ascii, foot, told } = context;
  const { ready } = opened;
  const { run } = goes;
  const look = lookOf(context);
  const items = lessonList(ui);
  const key = shownStep(ui)?.key;
  const feedback = feedbackLines(ready, run, look).slice(0, -1);
  const tone = run.feedback?.kind === 'wrong' || run.feedback?.kind === 'unreadable' ? 'error' : 'strong';
  // hints stay in sight as part of the text
  const shown = run.feedback?.kind === 'hint' ? [] : rowsOf(feedback, tone);
  const given = [...rowsOf(hintLines(ready, run, look), 'strong'), ...rowsOf(givenLines(ready, run, look))];
  const answer: Block =
    items === null
      ? rowsBlock([typedRow(`Your prediction${unitWords(key, context)} `, ui, context)], 0)
      : listBlock({ items: allWritten(items, ascii), mark: ui.mark, chosen: null, ordered: false, width }, 1);
  return stacked(
    [
      ...headRows(opened, goes, run.index, context).map((each, index) =>
        rowsBlock([each], index === 0 ? 0 : 8, index === 0 ? 1 : 0),
      ),
      rowsBlock(rowsOf(askLines(ready, run, look).slice(0, -1), 'strong'), 1),
      gap(9),
      scrollBlock(given, ui.scroll, 6),
      answer,
      gap(9),
      rowsBlock(shown, 3),
      textBlock(told, width, 3, 2, 'strong'),
    ],
    [foot],
    width,
    height,
  );
}

function unitWords(
  key: { readonly kind: string; readonly unit?: string } | undefined,
  { units }: LessonContext,
): string {
  const unit = key?.unit === undefined ? '' : unitTyped(key.unit, units);
  return unit === '' ? '' : ` (${unit})`;
}

const LEAST_SCROLLED = 4;

/** A text of which a piece is shown; the last row of the piece says how much there is above and below. */
function scrollBlock(rows: readonly Row[], scroll: number, rank: number): Block {
  return {
    wants: rows.length,
    least: Math.min(LEAST_SCROLLED, rows.length),
    rank,
    draw: (room) => {
      if (rows.length <= room || room < 2) return rows.slice(0, room);
      const piece = room - 1;
      const from = Math.max(0, Math.min(scroll, rows.length - piece));
      const after = rows.length - from - piece;
      const where = [...(from > 0 ? [`▲ ${from} above`] : []), ...(after > 0 ? [`▼ ${after} below`] : [])];
      return [...rows.slice(from, from + piece), row(where.join('  '), 'quiet')];
    },
  };
}

/** The way of a step that is revealed, or of an earlier one that is read again. */
export function revealedFrame(
  ui: LessonUi,
  opened: OpenedLesson,
  goes: Alone,
  context: LessonContext,
): readonly Row[] {
  const { ready } = opened;
  const { run } = goes;
  const index = goes.looked ?? run.index;
  const look = lookOf(context);
  const at = { ...run, index };
  const points = run.scores[index];
  const ask = ready.lesson.steps[index]?.ask ?? '';
  const told =
    goes.looked === null
      ? feedbackLines(ready, run, look)
      : [...(points === undefined ? [] : [`${points} of ${FULL_POINTS} points.`]), ''];
  const wrong =
    goes.looked === null
      ? goes.wrong.flatMap((feedback) => feedbackLines(ready, { ...LESSON_START, index, feedback }, look))
      : [];
  const text = [
    ...rowsOf(context.told === '' ? [] : [...wrapped(context.told, context.width), ''], 'strong'),
    ...rowsOf([...wrapped(written(ask, context.ascii), context.width), ''], 'strong'),
    ...rowsOf(told, run.feedback?.kind === 'right' && goes.looked === null ? 'holds' : 'plain'),
    ...rowsOf(wrong, 'quiet'),
    ...rowsOf(revealedLines(ready, at, look)),
  ];
  const title = `Step ${index + 1} of ${ready.lesson.steps.length}: ${written(ready.lesson.title, context.ascii)}`;
  return scrolledText(title, text.slice(0, -1), ui.scroll, context.foot, context);
}

/** How it went: the points of each step, and what is worth reading. */
export function endFrame(
  ui: LessonUi,
  { ready }: OpenedLesson,
  { run }: Alone,
  { width, height, ascii, foot, told }: LessonContext,
): readonly Row[] {
  const { points, of } = scoreOf(run);
  const items = allWritten(lessonList(ui) ?? [], ascii);
  const names = readNext(ready, run);
  const next =
    names.length === 0
      ? ''
      : `Read next, where points are missing: ${names.join(', ')}. Enter explains the step that is highlighted.`;
  return stacked(
    [
      rowsBlock([titleRow(written(ready.lesson.title, ascii), `${points} of ${of} points`, width)], 0),
      rowsBlock([progressRow(1, width)], 8, 0),
      textBlock(`The lesson is at its end: ${points} of ${of} points.`, width, 1, 1, 'strong'),
      gap(9),
      listBlock({ items, mark: ui.mark, chosen: null, ordered: false, width }, 2),
      gap(9),
      textBlock(next, width, 4, 2),
      textBlock(told, width, 3, 2, 'strong'),
    ],
    [foot],
    width,
    height,
  );
}
