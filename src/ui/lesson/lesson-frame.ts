import type { LengthUnits } from '../../quantities/kinds.ts';
import { explainedRows } from '../frame/explain.ts';
import { keyRow, titleRow } from '../frame/foot.ts';
import { leaveWords, withLast } from '../frame/leaving.ts';
import { listBlock } from '../frame/listing.ts';
import { typedRow } from '../frame/question.ts';
import { scrolledText } from '../frame/scrolled.ts';
import { isTooSmall, type Size, smallRows } from '../frame/size.ts';
import { gap, rowsBlock, stacked, textBlock } from '../frame/stack.ts';
import { keyHelpRows } from '../frame/texts.ts';
import { allWritten, written } from '../frame/written.ts';
import type { KeyWords } from '../keys/keymap-of.ts';
import { fitRow } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';
import { asciiRow } from '../look/signs.ts';
import { classFrame } from './class-frame.ts';
import { lessonHere, lessonList } from './lesson-here.ts';
import { LESSON_KEYS } from './lesson-keys.ts';
import { belowLeaving, type LessonUi } from './lesson-ui.ts';
import { endFrame, predictFrame, revealedFrame } from './step-frames.ts';

/** What a screen of lessons is drawn with. */
export interface LessonDrawing {
  readonly ascii: boolean;
  readonly color: boolean;
  /** where points are kept */
  readonly sessionFile: string;
  /** why they are not; null: they are */
  readonly unsaved: string | null;
}

export interface LessonContext {
  readonly width: number;
  /** rows of the frame: one less than the window has */
  readonly height: number;
  readonly ascii: boolean;
  readonly color: boolean;
  readonly units: LengthUnits;
  readonly foot: Row;
  /** what is said over the last line: what a key brought about, or that points are not kept; empty: nothing */
  readonly told: string;
}

/** All rows of the screen, exactly one fewer than the window has, each no wider than the window. Pure. */
export function lessonFrame(leaving: LessonUi, size: Size, drawing: LessonDrawing): readonly Row[] {
  const { ascii, color, unsaved } = drawing;
  const ui = belowLeaving(leaving);
  const [width, height] = [Math.max(1, size.columns), Math.max(1, size.rows - 1)];
  const isLeaving = leaving.over?.kind === 'leave';
  const leave = isLeaving ? leaveWords(isForClass(ui) ? CLASS_LEFT : drawing, width) : null;
  if (isTooSmall(size)) return finished(smallRows(leave, size), width, ascii);
  const notKept = unsaved === null ? [] : [unsaved];
  const context: LessonContext = {
    width,
    height,
    ascii,
    color,
    units: ui.units,
    foot: keyRow(LESSON_KEYS.shownKeys(lessonHere(ui)), width),
    told: written([...notKept, ...(ui.said === null ? [] : [ui.said])].join(' '), ascii),
  };
  const rows = bodyOf(ui, context);
  return finished(leave === null ? rows : withLast(rows, leave, width), width, ascii);
}

const CLASS_LEFT = { sessionFile: '', unsaved: 'Nothing of a class is kept.' };

const finished = (rows: readonly Row[], width: number, ascii: boolean): readonly Row[] =>
  ascii ? rows.map((each) => asciiRow(fitRow(asciiRow(each), width))) : rows;

function bodyOf(ui: LessonUi, context: LessonContext): readonly Row[] {
  const { over, opened } = ui;
  const { width, foot } = context;
  switch (over?.kind) {
    case 'help':
      return scrolledText(
        'Help',
        keyHelpRows(helpKeys(ui), isForClass(ui) ? CLASS_HELP : HELP, width),
        ui.scroll,
        foot,
        context,
      );
    case 'explained':
      return scrolledText('What it means', explainedRows(over.topic, context), ui.scroll, foot, context);
    case 'explain':
      return lessonListFrame(
        ui,
        { title: 'What does it mean?', lead: 'Type words of a name; Enter explains it.', prompt: 'Explain ' },
        context,
      );
    case 'changes':
      return lessonListFrame(
        ui,
        {
          title: 'What if: which number?',
          lead: 'Type words of its name. The lesson stays as it is.',
          prompt: 'What if ',
        },
        context,
      );
    default:
      if (opened === null)
        return lessonListFrame(
          ui,
          { title: 'Lessons', lead: 'Predict, reveal, why. Each goes on where it was left.', prompt: null },
          context,
        );
      if (opened.goes.how === 'class') return classFrame(ui, opened, opened.goes, context);
      if (opened.goes.looked !== null || opened.goes.run.phase === 'revealed')
        return revealedFrame(ui, opened, opened.goes, context);
      return opened.goes.run.phase === 'done'
        ? endFrame(ui, opened, opened.goes, context)
        : predictFrame(ui, opened, opened.goes, context);
  }
}

const isForClass = ({ opened }: LessonUi): boolean => opened?.goes.how === 'class';

/** The keys of what lies under the help. */
const helpKeys = (ui: LessonUi): KeyWords => [
  ...LESSON_KEYS.allKeys(lessonHere({ ...ui, over: null })),
  ['Ctrl-C', isForClass(ui) ? 'twice: leaves' : 'twice: leaves; your points are kept'],
];

const HELP =
  'A number may have any unit of its kind: 15 in, 3 1/2 in, 38 cm. A right prediction is worth ten points; each hint and each wrong one costs three, and one is left. What is revealed is worth none.';

const CLASS_HELP =
  'A guess of the room may have any unit, and counts like that of somebody alone; where the room says nothing, nothing is counted. Nothing of a class is kept.';

/** A title, a sentence, and a list; what is typed filters it. */
function lessonListFrame(
  ui: LessonUi,
  { title, lead, prompt }: { readonly title: string; readonly lead: string; readonly prompt: string | null },
  context: LessonContext,
): readonly Row[] {
  const { width, height, ascii, foot, told } = context;
  const items = allWritten(lessonList(ui) ?? [], ascii);
  return stacked(
    [
      rowsBlock([titleRow(title, '', width)], 0),
      rowsBlock([row('─'.repeat(width), 'quiet')], 1, 0),
      textBlock(lead, width, 5, 3),
      gap(9),
      ...(prompt === null ? [] : [rowsBlock([typedRow(prompt, ui, context)], 0)]),
      listBlock(
        {
          items,
          mark: Math.min(ui.mark, Math.max(0, items.length - 1)),
          chosen: null,
          ordered: false,
          width,
        },
        2,
      ),
      gap(9),
      textBlock(told, width, 3, 2, 'strong'),
    ],
    [foot],
    width,
    height,
  );
}
