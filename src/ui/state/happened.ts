import type { Event, Session } from '../../session/session.ts';
import { step } from '../../session/step.ts';
import { NOTHING_TO_UNDO, remembered, undo } from '../../session/undo.ts';
import { samePlace } from '../../session/walk.ts';
import type { World } from '../../session/world.ts';
import { NOTHING_TYPED } from '../keys/text-field.ts';
import { placed } from './placed.ts';
import { effectOf, type Over, type Turn, type Ui } from './ui.ts';

/** What an event of the session makes of the screen. */
export function happened(ui: Ui, event: Event, world: World): Turn {
  const [session, effects] = step(ui.session, event, world);
  const history = remembered(ui.history, ui.session, session);
  const closes = !samePlace(session.at, ui.session.at) || session.note?.kind !== 'error';
  const next: Ui = { ...ui, session, history, over: closes ? linesOver(session) : ui.over };
  return [placed(next, ui, world), effects.map(effectOf)];
}

/** What is to be read at once. */
export const linesOver = ({ note }: Session): Over | null =>
  note?.kind === 'said' && (note.lines ?? []).length > 0 ? { kind: 'lines' } : null;

/** At the question that was waited for, if it is known by now. Whether to leave is still asked. */
export function nextAsked(ui: Ui, world: World): Turn {
  const [next, requests] = happened(ui, { type: 'next' }, world);
  if (next.session.at.at === 'next') return [ui, []];
  return [ui.over?.kind === 'leave' ? { ...next, over: ui.over } : next, requests];
}

/** Takes back the last change of an answer, and stands where it was made. */
export function undone(ui: Ui, world: World): Turn {
  const taken = undo(ui.history, ui.session, world);
  if (taken === null) return [{ ...ui, said: NOTHING_TO_UNDO }, []];
  const { session, past, words } = taken;
  const next: Ui = { ...ui, session, history: past, field: NOTHING_TYPED };
  const shown = placed(next, { ...ui, session: { ...ui.session, at: { at: 'done' } } }, world);
  return [{ ...shown, said: words }, [effectOf({ kind: 'save' })]];
}
