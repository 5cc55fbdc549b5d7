import { screenOf } from '../../session/screen.ts';
import { samePlace } from '../../session/walk.ts';
import type { World } from '../../session/world.ts';
import { NOTHING_TYPED } from '../keys/text-field.ts';
import { itemsOf } from './items.ts';
import type { Ui } from './ui.ts';

/** The same with eye and hand where they belong at a place that was just come to. */
export function placed(ui: Ui, before: Ui, world: World): Ui {
  const stays = samePlace(ui.session.at, before.session.at) && ui.over?.kind === before.over?.kind;
  if (stays && ui.session.note?.kind === 'error') return ui;
  const fresh: Ui = { ...ui, field: NOTHING_TYPED, chosen: chosenAt(ui, world), scroll: 0, looked: null };
  return { ...fresh, mark: stays ? ui.mark : markAt(fresh, before, world) };
}

/** Options that the answer names as it stands; of those that stand in an order, the others after them. */
function chosenAt({ session }: Ui, world: World): readonly number[] {
  if (session.at.at !== 'question') return [];
  const screen = screenOf(session, world);
  if (screen.kind !== 'question' || !(screen.input.kind === 'list' || screen.input.kind === 'order'))
    return [];
  const { options } = screen.input;
  const named = (screen.current?.values ?? []).flatMap((value) => {
    const index = options.findIndex((option) => option.value === value);
    return index < 0 ? [] : [index];
  });
  return screen.input.kind === 'order' ? [...new Set([...named, ...options.keys()])] : named;
}

/** The row that stands for the answer as it is, or for what was just come from. */
function markAt(ui: Ui, before: Ui, world: World): number {
  const items = itemsOf(ui, world) ?? [];
  const rowOf = (key: (itemKey: string) => boolean): number =>
    Math.max(
      0,
      items.findIndex((each) => key(each.key)),
    );
  const { at } = ui.session;
  if (ui.over?.kind === 'jump') {
    return Math.max(
      0,
      items.findIndex(
        ({ act }) => act.do === 'event' && act.event.type === 'go' && samePlace(act.event.to, at),
      ),
    );
  }
  const { over } = before;
  if (ui.over?.kind === 'explain' && over?.kind === 'explained') return rowOf((key) => key === over.topic);
  if (ui.over !== null) return 0;
  if (at.at === 'parts') return rowOf((key) => key === 'go on');
  // back from an answer that was changed; whoever has come to the end goes on
  const isBack = before.session.detours.length > ui.session.detours.length;
  if (at.at === 'review' && before.session.at.at === 'question' && isBack) {
    const from = screenOf({ ...ui.session, at: before.session.at }, world);
    return from.kind === 'question' ? rowOf((key) => key.endsWith(` ${from.progress.number}`)) : 0;
  }
  if (at.at !== 'question') return 0;
  const screen = screenOf(ui.session, world);
  if (screen.kind !== 'question' || screen.current === null) return 0;
  const { from, values } = screen.current;
  return rowOf((key) => key === (from === 'not sure' ? 'not sure' : values[0]));
}
