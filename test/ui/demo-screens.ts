import { decide } from '../../src/rules/decide.ts';
import type { Decision } from '../../src/rules/decision.ts';
import { opened } from '../../src/session/opened.ts';
import type { Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { createWorld, type World } from '../../src/session/world.ts';
import { type Drawing, frame } from '../../src/ui/frame/frame.ts';
import type { Size } from '../../src/ui/frame/size.ts';
import { textOfRow } from '../../src/ui/look/row.ts';
import { beginning, type Ui } from '../../src/ui/state/ui.ts';
import { demoAnswers, demoCatalog } from '../catalog-demo/demo.ts';

/** Shops of the demo, by the names of their files: one recommendation, none that passes, many unknowns. */
export const SHOPS = ['shop', 'shop-nothing-passes', 'shop-many-unknowns'] as const;
type Shop = (typeof SHOPS)[number];

/** The demo catalog, and an engine that decides on the file of the shop whatever is answered, once for each way. */
export function demoWorld(shop: Shop): World {
  const { answers, shownIn } = demoAnswers(shop);
  const decided = new Map<string, Decision>();
  return createWorld(demoCatalog(), (_, catalog, { traces, ...options }) => {
    const key = JSON.stringify(options);
    const found = decided.get(key) ?? decide(answers, catalog, { ...options, shownIn, traces: true });
    decided.set(key, found);
    return found;
  });
}

/** An interview on the answers of a demo shop. */
function demoSession(shop: Shop, world: World): Session {
  return opened(demoAnswers(shop), newSession(world, [], null, 'all'), world);
}

export const demoUi = (shop: Shop, world: World): Ui => beginning(demoSession(shop, world), null);

export const drawing = (world: World, more: Partial<Drawing> = {}): Drawing => ({
  world,
  ascii: false,
  color: true,
  sessionFile: '/home/shop/.local/state/fivesides/session.json',
  unsaved: null,
  ...more,
});

/** The rows of a screen as text; a row of a list without its pointer. */
export const textFrame = (ui: Ui, size: Size, world: World, more: Partial<Drawing> = {}): readonly string[] =>
  frame(ui, size, drawing(world, more)).map(textOfRow);
