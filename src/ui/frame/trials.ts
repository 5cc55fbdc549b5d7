import { sideBySideLines, whatIfLines } from '../../report/exports/variants.ts';
import type { Beside } from '../../rules/beside.ts';
import type { Screen } from '../../session/screen.ts';
import type { Session } from '../../session/session.ts';
import { NO_RESULT, triedBeside, variantsBeside } from '../../session/trial-screens.ts';
import { wrapped } from '../look/cells.ts';
import { EMPTY, type Row, row } from '../look/row.ts';
import { ready } from '../state/not-yet.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { isCleared } from './feedback.ts';
import { keyLine, titleRow } from './foot.ts';
import { typedRow } from './question.ts';
import { scrolledFrame } from './scrolled.ts';
import { gap, rowsBlock, stacked, textBlock } from './stack.ts';
import { toldRows } from './told.ts';
import { tonedRow } from './toned.ts';

/** What is tried against the answers of the interview, or the variants beside them. */
export function trialFrame(
  ui: Ui,
  screen: Screen & { kind: 'trial' | 'variants' },
  context: Context,
): readonly Row[] {
  const title =
    screen.kind === 'variants'
      ? 'Variants, side by side'
      : screen.of === null
        ? 'What if: this is tried'
        : `What if: ${screen.of}`;
  const keys =
    screen.kind === 'variants' && ui.session.trial === null
      ? `A digit looks at one, to change, keep or remove it: ${screen.names.map((name, index) => `${index + 1} ${name}`).join(', ')}.`
      : '';
  const rows = [
    ...toldRows(ui, context),
    ...(keys === '' ? [] : [...wrapped(keys, context.width).map((line) => row(line, 'quiet')), EMPTY]),
    ...textRows(ui.session, screen.kind, context),
  ];
  return scrolledFrame(ui, title, rows, context);
}

const WORKING: readonly Row[] = [row('This is being worked out.', 'quiet')];

function textRows(session: Session, kind: 'trial' | 'variants', context: Context): readonly Row[] {
  const { world, width, ascii } = context;
  const work = kind === 'trial' ? triedBeside : variantsBeside;
  const key = `${kind} ${width} ${ascii}`;
  const known = texts.get(session);
  if (known?.key === key) return known.rows;
  const beside = ready((): Beside | null => work(session, world));
  if (beside === undefined) return WORKING;
  if (beside === null) return wrapped(NO_RESULT, width).map((line) => row(line));
  const lines = (kind === 'trial' ? whatIfLines : sideBySideLines)(beside, { width, ascii });
  const rows = lines.map(tonedRow);
  texts.set(session, { key, rows });
  return rows;
}

/** As it was laid out last: whoever scrolls asks for the same one at every key. */
const texts = new WeakMap<Session, { readonly key: string; readonly rows: readonly Row[] }>();

/** A name for what is tried. */
export function namingFrame(
  ui: Ui,
  { of, error }: Screen & { kind: 'naming' },
  context: Context,
): readonly Row[] {
  const { width, height, here } = context;
  const again = of === null ? '' : ` Enter alone: ${of}, which then says what is tried now.`;
  return stacked(
    [
      rowsBlock([titleRow('What if: a name for it', '', width)], 0),
      rowsBlock([row('─'.repeat(width), 'quiet')], 8, 0),
      textBlock(
        `What is it called beside the answers of the interview? Three can stand there, each with another name.${again}`,
        width,
        4,
      ),
      gap(9),
      rowsBlock([typedRow('Name ', ui, context)], 0),
      gap(9),
      textBlock(error === null || isCleared(ui, error, null) ? '' : `✗ ${error.why}`, width, 2, 1, 'error'),
    ],
    [keyLine(here, width)],
    width,
    height,
  );
}
