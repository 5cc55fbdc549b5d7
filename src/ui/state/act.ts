import { withoutTrial } from '../../session/trial.ts';
import { REVIEW } from '../../session/walk.ts';
import type { World } from '../../session/world.ts';
import type { Action } from '../keys/situation.ts';
import { NOTHING_TYPED } from '../keys/text-field.ts';
import { happened, undone } from './happened.ts';
import { type Item, itemsOf } from './items.ts';
import { movedBy, PAGE } from './list-moves.ts';
import { placed } from './placed.ts';
import { MOST_COMPARED, type Over, RESULT_VIEWS, type Turn, type Ui } from './ui.ts';

/** Does what a key asks for. */
export function acted(ui: Ui, action: Exclude<Action, 'row' | 'place' | 'look'>, world: World): Turn {
  const over = (to: Over | null): Turn => [placed({ ...ui, over: to }, ui, world), []];
  switch (action) {
    case 'up':
      return moved(ui, -1, world);
    case 'down':
      return moved(ui, 1, world);
    case 'page-up':
      return moved(ui, -PAGE, world);
    case 'page-down':
      return moved(ui, PAGE, world);
    case 'first':
      return moved(ui, Number.NEGATIVE_INFINITY, world);
    case 'last':
      return moved(ui, Number.POSITIVE_INFINITY, world);
    case 'yes':
      return [{ ...ui, mark: 0 }, []];
    case 'no':
      return [{ ...ui, mark: 1 }, []];
    case 'raise':
      return [placedAt(ui, ui.mark - 1, world), []];
    case 'take':
      return taken(ui, world);
    case 'toggle':
      return toggled(ui, world);
    case 'clear':
      return [{ ...ui, field: NOTHING_TYPED, mark: ui.over === null ? ui.mark : 0 }, []];
    case 'close':
      return over(behind(ui.over));
    case 'back':
      return back(ui, world);
    case 'not-sure':
      return happened(ui, { type: 'not-sure' }, world);
    case 'why':
    case 'explain':
    case 'jump':
    case 'find':
    case 'help':
      return over({ kind: action });
    case 'review':
      return happened(ui, { type: 'go', to: REVIEW }, world);
    case 'parts':
      return happened(ui, { type: 'go', to: { at: 'parts' } }, world);
    case 'result':
      return happened(ui, { type: 'go', to: { at: 'result' } }, world);
    case 'ask':
      return happened(ui, { type: 'ask', asks: null }, world);
    case 'undo':
      return undone(ui, world);
    case 'add':
      return happened(ui, { type: 'add-part' }, world);
    case 'copy':
    case 'rename':
    case 'remove':
      return onPart(ui, action, world);
    case 'pick':
      return [{ ...ui, looked: 'others', mark: 0, scroll: 0, compared: comparedNow(ui, world) }, []];
    case 'what-if':
      return over({ kind: 'try' });
    case 'keep':
    case 'drop':
      return happened(ui, { type: action }, world);
    case 'name':
      return happened(ui, { type: 'name', name: null }, world);
    case 'variants':
      return happened(ui, { type: 'go', to: { at: 'variants' } }, world);
    case 'take-out':
      return happened(ui, { type: 'remove-variant', variant: ui.session.trial?.of ?? '' }, world);
    case 'write-variants':
      return happened(ui, { type: 'write', what: 'variants', file: null }, world);
    case 'quit':
      return left(ui, world);
    case 'suspend':
      return [ui, [{ kind: 'suspend' }]];
    case 'repaint':
      return [ui, [{ kind: 'repaint' }]];
    default:
      return viewed(ui, action);
  }
}

/** What is seen again where something is closed. */
function behind(over: Over | null): Over | null {
  if (over?.kind === 'open') return { kind: 'start' };
  return over?.kind === 'explained' ? { kind: 'explain' } : null;
}

function viewed(ui: Ui, action: Action): Turn {
  const view = RESULT_VIEWS.find((each) => `view-${each}` === action);
  if (view === undefined) return [ui, []];
  // what was said belongs to the view that it was said in
  const session = ui.session.note === null ? ui.session : { ...ui.session, note: null };
  return [{ ...ui, session, view, looked: null, mark: 0, scroll: 0 }, []];
}

const moved = (ui: Ui, by: number, world: World): Turn => [
  { ...ui, ...movedBy(ui, by, itemsOf(ui, world)?.length ?? 0) },
  [],
];

function taken(ui: Ui, world: World): Turn {
  const { over, field } = ui;
  if (over?.kind === 'open') return [ui, [{ kind: 'open', file: field.text }]];
  const items = itemsOf(ui, world);
  if (items === null) {
    return happened(ui, field.text === '' ? { type: 'accept' } : { type: 'reply', text: field.text }, world);
  }
  const marked = items[Math.min(ui.mark, items.length - 1)];
  return marked === undefined ? [ui, []] : takenItem(ui, marked, world);
}

function takenItem(ui: Ui, { act }: Item, world: World): Turn {
  switch (act.do) {
    case 'event':
      return happened(ui, act.event, world);
    case 'choose': {
      const chosen = ui.chosen.length === 0 ? [act.option] : ui.chosen;
      return happened(ui, { type: 'reply', text: chosen.map((index) => index + 1).join(', ') }, world);
    }
    case 'look':
      if (ui.view === 'compare') return picked(ui, act.id);
      return [{ ...ui, over: null, field: NOTHING_TYPED, looked: act.id, scroll: 0 }, []];
    case 'over':
      return [placed({ ...ui, over: act.over }, ui, world), []];
    case 'view':
      return viewed(ui, `view-${act.view}`);
    case 'say':
      return [{ ...ui, said: act.words }, []];
  }
}

/** Takes an arrangement into the comparison, or out of it; the oldest makes room. */
function picked(ui: Ui, id: string): Turn {
  const others = ui.compared.filter((each) => each !== id);
  const compared = others.length < ui.compared.length ? others : [...ui.compared, id].slice(-MOST_COMPARED);
  return [{ ...ui, compared }, []];
}

/** What is compared where nobody chose: the recommendation and what came next. */
export function comparedNow({ compared, session }: Ui, world: World): readonly string[] {
  if (compared.length > 0) return compared;
  const decision = world.decision(session.kept);
  if (decision === null) return [];
  const { recommended, runnersUp, contenders, nearestMisses } = decision;
  const first = recommended === null ? contenders : [recommended, ...runnersUp.map(({ id }) => id)];
  return [...new Set([...first, ...nearestMisses])].slice(0, MOST_COMPARED);
}

function toggled(ui: Ui, world: World): Turn {
  const act = itemsOf(ui, world)?.[ui.mark]?.act;
  if (act?.do !== 'choose') return [ui, []];
  const others = ui.chosen.filter((each) => each !== act.option);
  const chosen = others.length < ui.chosen.length ? others : [...ui.chosen, act.option];
  return [{ ...ui, chosen }, []];
}

/** What a digit does: the highlight goes to that row, or the highlighted row to that place. */
export function numbered(ui: Ui, action: 'row' | 'place', digit: number, world: World): Ui {
  if (action === 'place') return placedAt(ui, digit - 1, world);
  const rows = itemsOf(ui, world)?.length ?? 0;
  return { ...ui, mark: Math.max(0, Math.min(digit, rows) - 1) };
}

/** The highlighted one of the rows that stand in an order, at another place in it. The highlight goes with it. */
function placedAt(ui: Ui, to: number, world: World): Ui {
  const act = itemsOf(ui, world)?.[ui.mark]?.act;
  if (act?.do !== 'choose') return ui;
  const others = ui.chosen.filter((each) => each !== act.option);
  const mark = Math.max(0, Math.min(to, others.length));
  return { ...ui, chosen: others.toSpliced(mark, 0, act.option), mark };
}

function back(ui: Ui, world: World): Turn {
  if (ui.session.at.at === 'result' && ui.looked !== null) return [{ ...ui, looked: null, scroll: 0 }, []];
  if (ui.session.at.at === 'result' && ui.view !== 'overview') {
    return [{ ...ui, view: 'overview', scroll: 0, mark: 0 }, []];
  }
  return happened(ui, { type: 'back' }, world);
}

function onPart(ui: Ui, action: 'copy' | 'rename' | 'remove', world: World): Turn {
  const marked = itemsOf(ui, world)?.[ui.mark]?.act;
  if (marked?.do !== 'event' || marked.event.type !== 'edit-part') {
    return [{ ...ui, said: 'Move to a part first.' }, []];
  }
  return happened(ui, { type: `${action}-part`, part: marked.event.part }, world);
}

/** At the result it is the end; elsewhere the interview is left unfinished. */
function left(ui: Ui, world: World): Turn {
  if (ui.session.trial !== null) {
    const { at, kept } = withoutTrial(ui.session);
    if (at.at === 'result') world.decision(kept);
    return [ui, [{ kind: 'leave', how: 'quit' }]];
  }
  if (ui.session.at.at === 'result') {
    // the exit code is its outcome: it is waited for
    world.decision(ui.session.kept);
    return happened(ui, { type: 'reply', text: 'no' }, world);
  }
  return [ui, [{ kind: 'leave', how: 'quit' }]];
}
