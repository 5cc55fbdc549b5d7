import type { Event, Session } from '../../session/session.ts';
import { step } from '../../session/step.ts';
import { samePlace } from '../../session/walk.ts';
import type { World } from '../../session/world.ts';
import { NOTHING_TYPED } from '../keys/text-field.ts';
import { placed } from './placed.ts';
import { effectOf, MOST_UNDONE, type Turn, type Ui } from './ui.ts';

/** What an event of the session makes of the screen. */
export function happened(ui: Ui, event: Event, world: World): Turn {
  const [session, effects] = step(ui.session, event, world);
  const changed = stateOf(session) !== stateOf(ui.session);
  const history = changed ? [...ui.history, ui.session].slice(-MOST_UNDONE) : ui.history;
  const closes = !samePlace(session.at, ui.session.at) || session.note?.kind !== 'error';
  const next: Ui = { ...ui, session, history, over: closes ? null : ui.over };
  return [placed(next, ui, world), effects.map(effectOf)];
}

/** What can be taken back: a change of an answer, of what is tried, of the variants. */
const stateOf = ({ kept, trial, variants }: Session): string =>
  JSON.stringify([kept, trial === null, variants]);

/** At the question that was waited for, if it is known by now. Whether to leave is still asked. */
export function nextAsked(ui: Ui, world: World): Ui {
  const [next] = happened(ui, { type: 'next' }, world);
  if (next.session.at.at === 'next') return ui;
  return ui.over?.kind === 'leave' ? { ...next, over: ui.over } : next;
}

/** Takes back the last change of an answer, and stands where it was made. */
export function undone(ui: Ui, world: World): Turn {
  const past = ui.history.at(-1);
  if (past === undefined) return [{ ...ui, said: 'There is nothing to take back.' }, []];
  const session: Session = { ...past, note: null };
  const next: Ui = { ...ui, session, history: ui.history.slice(0, -1), field: NOTHING_TYPED };
  const shown = placed(next, { ...ui, session: { ...ui.session, at: { at: 'done' } } }, world);
  return [{ ...shown, said: 'The last change is taken back.' }, [effectOf({ kind: 'save' })]];
}
