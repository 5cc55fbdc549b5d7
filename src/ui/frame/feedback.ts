import { printable } from '../../documents/printable.ts';
import { liveLine } from '../../report/live-line.ts';
import { liveOf } from '../../session/live.ts';
import { previewLive, previewOf } from '../../session/preview.ts';
import type { Screen } from '../../session/screen.ts';
import type { Event } from '../../session/session.ts';
import type { World } from '../../session/world.ts';
import { wrapped } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';
import { itemsOf } from '../state/items.ts';
import { ready } from '../state/not-yet.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';

/** The answer that Enter would give now; null where nothing is typed or highlighted that is one. */
function candidate(ui: Ui, world: World): Event | null {
  if (ui.field.text.trim() !== '' && ui.over === null) return { type: 'reply', text: ui.field.text };
  const act = itemsOf(ui, world)?.[ui.mark]?.act;
  if (act?.do === 'event') return act.event;
  if (act?.do !== 'choose') return null;
  const chosen = ui.chosen.length === 0 ? [act.option] : ui.chosen;
  return { type: 'reply', text: chosen.map((index) => index + 1).join(', ') };
}

const WORKING = 'working it out …';
const NOTHING_JUDGED = 'Nothing is judged yet: a part needs a size first.';

/** What the answer before did, and what the one that is typed or highlighted would do; the first stays for comparison. */
export function feedbackRows(
  ui: Ui,
  screen: Screen,
  { world, width, unsaved }: Context,
  roomy: boolean,
): readonly Row[] {
  const { accepted, error, said } = screen;
  const sentences: Row[] = [];
  const add = (text: string, tone: 'plain' | 'error' | 'quiet' | 'strong' = 'plain'): void => {
    for (const line of wrapped(printable(text), width)) sentences.push(row(line, tone));
  };
  const now = nowOf(ui, world);
  if (unsaved?.startsWith('NOT') === true) add(`✗ ${unsaved}`, 'error');
  if (ui.said !== null) add(ui.said, 'strong');
  if (said !== null) add(said, 'strong');
  if (now !== null && !now.ok) add(`✗ ${now.why}`, 'error');
  else if (error !== null && now === null) add(`✗ ${error.why}`, 'error');
  if (now?.ok) add(`Enter takes: ${now.words}`, 'strong');
  if (!roomy && sentences.length > 0) return sentences.slice(0, 1);
  if (accepted !== null) {
    const live = ready(() => liveOf(ui.session, world));
    const did = live === undefined ? WORKING : live === null ? NOTHING_JUDGED : liveLine(live);
    add(`Before: ${accepted.title}: ${accepted.words}. ${did}`, 'quiet');
  }
  if (now?.ok) {
    const live = ready(() => previewLive(now, world));
    const would = live === undefined ? WORKING : live === null ? NOTHING_JUDGED : liveLine(live);
    add(`With it: ${would}`);
  }
  if (!roomy) return sentences.slice(0, 1);
  return sentences;
}

/** Null where there is nothing to look ahead to. */
function nowOf(ui: Ui, world: World): ReturnType<typeof previewOf> | null {
  if (ui.session.at.at !== 'question') return null;
  const event = candidate(ui, world);
  return event === null ? null : previewOf(ui.session, event, world);
}
