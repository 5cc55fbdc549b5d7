import { screenOf } from '../../session/screen.ts';
import type { World } from '../../session/world.ts';
import type { Situation } from '../keys/situation.ts';
import { itemsOf } from './items.ts';
import type { Ui } from './ui.ts';

/** Where a key is pressed. What lies over the screen decides first. */
export function situationOf(ui: Ui, world: World): Situation {
  const { session, over } = ui;
  const input = inputOf(ui, world);
  const typesOver = over !== null && TYPED_OVER.has(over.kind);
  const names = session.at.at === 'file' || session.at.at === 'naming';
  const typesHere = over === null && (names || input === 'quantity' || input === 'text');
  return {
    at: session.at.at,
    over: over?.kind ?? null,
    input,
    typing: typesOver || typesHere,
    typed: (typesOver || typesHere) && ui.field.text !== '',
    rows: itemsOf(ui, world)?.length ?? 0,
    view: ui.view,
    looking: ui.looked !== null,
    tries: session.trial !== null,
    ofVariant: session.trial !== null && session.trial.of !== null,
    variants: session.variants.length,
  };
}

const TYPED_OVER: ReadonlySet<string> = new Set(['jump', 'try', 'find', 'open', 'explain']);

/** How the question is answered; null where none is asked. */
function inputOf({ session }: Ui, world: World): Situation['input'] {
  if (session.at.at !== 'question') return null;
  const screen = screenOf(session, world);
  return screen.kind === 'question' ? screen.input.kind : null;
}
