import { formatQuantity } from '../../quantities/format-quantity.ts';
import { pageAt } from '../../teaching/lessons/class-run.ts';
import { classLines, trialLines, tryingLines } from '../../teaching/lessons/class-words.ts';
import { unitTyped } from '../../teaching/lessons/read-prediction.ts';
import { typedRow } from '../frame/question.ts';
import { tonedRow } from '../frame/toned.ts';
import { fitRow, wrapped } from '../look/cells.ts';
import { EMPTY, type Row, row } from '../look/row.ts';
import type { LessonContext } from './lesson-frame.ts';
import type { ForClass, LessonUi, OpenedLesson } from './lesson-ui.ts';

/** Columns that are filled at most: what a room reads from afar. */
const WIDEST = 64;
const LEAST_MARGIN = 4;

/**
 * One thing in the middle of the screen, with room around it, and nothing besides. What is tried stands under it, before and
 * with it; the keys only with the title, and where something is typed.
 */
export function classFrame(
  ui: LessonUi,
  { ready }: OpenedLesson,
  { run }: ForClass,
  context: LessonContext,
): readonly Row[] {
  const { width, height, ascii, units, foot, told } = context;
  const column = Math.min(WIDEST, width - 2 * LEAST_MARGIN);
  const look = { width: column, ascii, units };
  const room = height - 1;
  const typed = typedBlock(ui, { ...context, width: column });
  const paragraphs = [
    ...(ui.over?.kind === 'tried'
      ? trialLines(ready, run, look)
      : [...classLines(ready, run, look), ...tryingLines(run, look)]),
    ...typed,
    ...(told === '' ? [] : [wrapped(told, column)]),
  ];
  const margin = Math.floor((width - column) / 2);
  const rows = spaced(paragraphs, room).map(
    (line): Row => indented(typeof line === 'string' ? toned(line) : line, margin),
  );
  const from = Math.max(0, Math.min(ui.scroll, rows.length - room));
  const shown = rows.slice(from, from + room);
  const above = Math.floor((room - shown.length) / 3);
  const fill = (count: number): readonly Row[] => Array.from({ length: count }, () => EMPTY);
  const below = rows.length - from - shown.length;
  const last =
    ui.over !== null || pageAt(ready, run).kind === 'title'
      ? foot
      : below > 0
        ? row(`  ▼ ${below} below`, 'quiet')
        : EMPTY;
  return [...fill(above), ...shown, ...fill(room - shown.length - above), last].map((each) =>
    fitRow(each, width),
  );
}

type Line = string | Row;

/** Paragraphs with as much room between them as there is: three rows, two, one. */
function spaced(paragraphs: readonly (readonly Line[])[], room: number): readonly Line[] {
  const lines = paragraphs.reduce((sum, each) => sum + each.length, 0);
  const between = Math.max(1, Math.min(3, Math.floor((room - lines) / Math.max(1, paragraphs.length))));
  return paragraphs.flatMap((each, index): readonly Line[] =>
    index === 0 ? each : [...Array.from({ length: between }, () => ''), ...each],
  );
}

const toned = (line: string): Row => (/^STEP \d+ OF \d+$/.test(line) ? row(line, 'quiet') : tonedRow(line));

const indented = ({ spans, ...rest }: Row, by: number): Row => ({
  ...rest,
  spans: [{ text: ' '.repeat(by), tone: 'plain' }, ...spans],
});

/** What is typed: the guess of the room, or another value. */
function typedBlock(ui: LessonUi, context: LessonContext): readonly (readonly Line[])[] {
  const { over } = ui;
  const { units } = context;
  if (over?.kind === 'guess') return [[typedRow('The room says ', ui, context)]];
  if (over?.kind !== 'change') return [];
  const { words, unit, value } = over.of;
  const symbol = unitTyped(unit, units);
  const now = formatQuantity(value, unit, { shownIn: units, beside: true, grouped: 'thin' });
  return [
    wrapped(`${words}: ${now}. What if it were another one?`, context.width),
    [typedRow(`Instead${symbol === '' ? '' : ` (${symbol})`} `, ui, context)],
  ];
}
