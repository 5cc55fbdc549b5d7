import { liveLine } from '../../report/live-line.ts';
import { firstNeeded } from '../../session/first-needed.ts';
import { liveOf } from '../../session/live.ts';
import { previewLive, previewOf } from '../../session/preview.ts';
import type { Screen } from '../../session/screen.ts';
import type { Event, Session } from '../../session/session.ts';
import type { World } from '../../session/world.ts';
import { cut, wrapped } from '../look/cells.ts';
import { type Row, row, type Tone } from '../look/row.ts';
import { itemsOf } from '../state/items.ts';
import { ready } from '../state/not-yet.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { type Block, rowsBlock } from './stack.ts';
import { written } from './written.ts';

/** The answer that Enter would give now; null where nothing is typed or highlighted that is one. */
function candidate(ui: Ui, world: World): Event | null {
  if (ui.field.text.trim() !== '' && ui.over === null) return { type: 'reply', text: ui.field.text };
  const act = itemsOf(ui, world)?.[ui.mark]?.act;
  if (act?.do === 'event') return act.event;
  if (act?.do !== 'choose') return null;
  const chosen = ui.chosen.length === 0 ? [act.option] : ui.chosen;
  return { type: 'reply', text: chosen.map((index) => index + 1).join(', ') };
}

const WORKING = 'This is being worked out.';

/** What stands under the answers. */
interface Feedback {
  /** what went wrong, or what a key brought about: always in whole */
  readonly told: readonly Row[];
  /** what the answer before did, and what the one that is typed or highlighted would do */
  readonly live: readonly Row[];
}

/** The first of both stays for comparison; where room is short, what would be comes on one line. */
export function feedbackOf(
  ui: Ui,
  screen: Screen,
  { world, width, unsaved, ascii }: Context,
  roomy: boolean,
): Feedback {
  const { accepted, error, said } = screen;
  const lines = (text: string, tone: Tone): readonly Row[] =>
    wrapped(written(text, ascii), width).map((line) => row(line, tone));
  const now = nowOf(ui, world);
  const notSaved = unsaved?.startsWith('NOT') === true ? unsaved : null;
  const wrong =
    now === null
      ? isCleared(ui, error, itemsOf(ui, world))
        ? null
        : (error?.why ?? null)
      : now.ok
        ? null
        : now.why;
  const told = [
    ...(notSaved === null ? [] : lines(`✗ ${notSaved}`, 'error')),
    ...(ui.said === null ? [] : lines(ui.said, 'strong')),
    ...(said === null ? [] : lines(said, 'strong')),
    ...(wrong === null ? [] : lines(`✗ ${wrong}`, 'error')),
  ];
  const before = accepted === null ? null : effectOf(() => liveOf(ui.session, world), ui.session, world);
  const would =
    now?.ok && now.after.note?.kind === 'accepted'
      ? effectOf(() => previewLive(now, world), now.after, world)
      : null;
  if (!roomy) {
    const short =
      now?.ok && would !== null
        ? `${cut(now.words, Math.floor(width / 3))}: ${continued(would)}`
        : accepted !== null
          ? `After ${cut(accepted.title, Math.floor(width / 3))}: ${continued(before ?? '')}`
          : null;
    return { told, live: short === null ? [] : [row(cut(written(short, ascii), width))] };
  }
  return {
    told,
    live: [
      ...(now?.ok ? lines(now.takes, 'strong') : []),
      ...(accepted === null ? [] : lines(`Before: ${accepted.title}: ${accepted.words}. ${before}`, 'quiet')),
      ...(would === null ? [] : lines(`With it: ${would}`, 'plain')),
    ],
  };
}

/** A sentence behind a colon. */
const continued = (sentence: string): string => sentence.charAt(0).toLowerCase() + sentence.slice(1);

/** Whether what was refused is not typed there any more. */
export const isCleared = ({ field }: Ui, error: Screen['error'], items: readonly unknown[] | null): boolean =>
  error !== null && error.typed !== '' && field.text === '' && items === null;

const LEAST_LIVE_ROWS = 3;

/** What is told gives way after nearly everything else, what is live down to three lines, or to one. */
export function feedbackBlocks({ told, live }: Feedback, roomy: boolean): readonly Block[] {
  return [rowsBlock(told, 3), rowsBlock(live, 4, Math.min(roomy ? LEAST_LIVE_ROWS : 1, live.length))];
}

function effectOf(work: () => ReturnType<typeof liveOf>, { kept }: Session, world: World): string {
  const live = ready(work);
  if (live === undefined) return WORKING;
  return live === null ? `Nothing is judged yet: ${firstNeeded(world.survey(kept))}.` : liveLine(live);
}

/** Null where there is nothing to look ahead to. */
function nowOf(ui: Ui, world: World): ReturnType<typeof previewOf> | null {
  if (ui.session.at.at !== 'question') return null;
  const event = candidate(ui, world);
  return event === null ? null : previewOf(ui.session, event, world);
}
