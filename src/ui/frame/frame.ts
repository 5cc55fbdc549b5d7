import { type Screen, screenOf } from '../../session/screen.ts';
import type { World } from '../../session/world.ts';
import { fitRow } from '../look/cells.ts';
import type { Row } from '../look/row.ts';
import { asciiRow } from '../look/signs.ts';
import { situationOf } from '../state/situation.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { explainedFrame, explainFrame } from './explain.ts';
import { leaveWords, withLast } from './leaving.ts';
import { jumpFrame, openFrame, placeFrame, startFrame, tryFrame } from './lists.ts';
import { questionFrame } from './question.ts';
import { resultFrame } from './results.ts';
import { scrolledFrame } from './scrolled.ts';
import { isTooSmall, type Size, smallRows } from './size.ts';
import { helpRows, lineRows, whyRows } from './texts.ts';
import { namingFrame, trialFrame } from './trials.ts';
import { allWritten } from './written.ts';

export interface Drawing {
  readonly world: World;
  readonly ascii: boolean;
  readonly color: boolean;
  readonly sessionFile: string;
  /** why the answers are not saved; null: they are */
  readonly unsaved: string | null;
}

/**
 * All rows of the screen, exactly one fewer than the window has, each no wider than the window. Pure. In a window that
 * is too small, a request to enlarge it.
 */
export function frame(ui: Ui, size: Size, drawing: Drawing): readonly Row[] {
  const { world, ascii, color, sessionFile, unsaved } = drawing;
  const width = Math.max(1, size.columns);
  const height = Math.max(1, size.rows - 1);
  const rows = isTooSmall(size)
    ? smallRows(ui.over?.kind === 'leave' ? leaveWords(drawing, width) : null, size)
    : bodyOf(ui, {
        world,
        here: situationOf(below(ui), world),
        width,
        height,
        ascii,
        color,
        sessionFile,
        unsaved,
      });
  const leaving =
    ui.over?.kind === 'leave' && !isTooSmall(size) ? withLast(rows, leaveWords(drawing, width), width) : rows;
  return ascii ? leaving.map((each) => asciiRow(fitRow(asciiRow(each), width))) : leaving;
}

/** What Ctrl-C was pressed over stays in sight. */
const below = (ui: Ui): Ui => (ui.over?.kind === 'leave' ? { ...ui, over: ui.over.under } : ui);

function bodyOf(leaving: Ui, context: Context): readonly Row[] {
  const ui = below(leaving);
  if (ui.session.at.at === 'result' && (ui.over === null || ui.over.kind === 'find'))
    return resultFrame(ui, context);
  if (ui.over?.kind === 'help') {
    const behind = situationOf({ ...ui, over: null }, context.world);
    const shown = ui.session.at.at === 'resume' ? { ...behind, over: 'start' as const } : behind;
    return scrolledFrame(ui, 'Help', helpRows(shown, context.width), context);
  }
  if (ui.over?.kind === 'explain') return explainFrame(ui, context);
  if (ui.over?.kind === 'explained') return explainedFrame(ui, ui.over.topic, context);
  if (ui.over?.kind === 'try') return tryFrame(ui, context);
  if (ui.over?.kind === 'jump') return jumpFrame(ui, context);
  if (ui.over?.kind === 'open') return openFrame(ui, context);
  if (ui.over?.kind === 'lines')
    return scrolledFrame(ui, 'Parts from a table', lineRows(ui, context), context);
  const screen = writtenScreen(screenOf(ui.session, context.world), context.ascii);
  if (ui.over?.kind === 'start' || screen.kind === 'resume') return startFrame(ui, screen, context);
  if (screen.kind === 'trial' || screen.kind === 'variants') return trialFrame(ui, screen, context);
  if (screen.kind === 'naming') return namingFrame(ui, screen, context);
  if (screen.kind !== 'question') return placeFrame(ui, screen, context);
  if (ui.over?.kind === 'why')
    return scrolledFrame(ui, 'Why this is asked', whyRows(screen, context.width), context);
  return questionFrame(ui, screen, context);
}

/** Once for the same screen, which is shown at many keys. */
function writtenScreen(screen: Screen, ascii: boolean): Screen {
  const known = writtenScreens.get(screen);
  if (known?.ascii === ascii) return known.screen;
  const now = allWritten(screen, ascii);
  writtenScreens.set(screen, { ascii, screen: now });
  return now;
}

const writtenScreens = new WeakMap<Screen, { readonly ascii: boolean; readonly screen: Screen }>();
