import { describe, expect, test } from 'vitest';
import { screenOf } from '../../src/session/screen.ts';
import type { Session } from '../../src/session/session.ts';
import { newSession } from '../../src/session/start.ts';
import { step } from '../../src/session/step.ts';
import { itemsOf } from '../../src/ui/state/items.ts';
import { beginning, type Ui } from '../../src/ui/state/ui.ts';
import { after, KEY } from '../ui/pressing.ts';
import { type AskedShop, askedShop } from './as-asked.ts';
import { lineByLine } from './line-shell.ts';

const LONGEST = 600_000;
const SHOP = askedShop('shop-hand-lifting', 1);

/** What came of it: the same recommendation from fewer questions, and nothing left that could change it. */
function expectProven(shop: AskedShop, session: Session, questions: number): void {
  const { world, knows, recommended } = shop;
  expect(recommended(knows)).not.toBeNull();
  expect(recommended(session.kept)).toBe(recommended(knows));
  expect(questions).toBeLessThan(shop.questions);
  const screen = screenOf(session, world);
  if (screen.kind !== 'review') throw new Error(`no review, but ${screen.kind}`);
  expect(screen.open).toBe(0);
  expect(screen.settled).toEqual({ outcome: 'recommended', isProven: true, byFew: false });
  const skipped = screen.lines.filter(({ state }) => state === 'not asked').length;
  expect(questions + skipped).toBe(screen.lines.filter(({ state }) => state !== 'ignored').length);
}

describe('a shop that is answered only as far as it is asked ends with what all its answers recommend', () => {
  test('line by line', { timeout: LONGEST }, async () => {
    const shop = SHOP;
    const { world } = shop;
    let [now, questions] = [newSession(world, [], null), 0];
    const { session, printed } = await lineByLine(now, world, {
      next: async () => {
        const line = shop.says(now);
        if (now.at.at === 'question') questions += 1;
        if (line === null) return { end: 'input' };
        [now] = step(now, { type: 'reply', text: line }, world);
        expect(now.note?.kind, line).not.toBe('error');
        return { line, early: false };
      },
      echo: true,
    });
    expectProven(shop, session, questions);
    expect(printed).toContain('Asked now because it may drop');
    expect(printed).toContain('Not asked, since they cannot change the result any more: the');
  });

  test('on the screen', { timeout: LONGEST }, () => {
    const shop = SHOP;
    const { world } = shop;
    let [ui, questions] = [beginning(newSession(world, [], null), null), 0];
    for (let line = shop.says(ui.session); line !== null; line = shop.says(ui.session)) {
      if (ui.session.at.at === 'question') questions += 1;
      ui = after(ui, world, keysFor(ui, line, shop));
      expect(ui.session.note?.kind, line).not.toBe('error');
    }
    expectProven(shop, ui.session, questions);
  });
});

/** The keys that say it: typed, or the number of its row. */
function keysFor(ui: Ui, line: string, { world }: AskedShop): string {
  const screen = screenOf(ui.session, world);
  if (screen.kind === 'parts') return line === 'add' ? 'a' : KEY.enter;
  if (screen.kind !== 'question') throw new Error(`nothing is asked at ${screen.kind}`);
  if (line === 'not sure') return '\u000e';
  const { input } = screen;
  if (input.kind === 'yes-no') return `${line === 'yes' ? 'y' : 'n'}${KEY.enter}`;
  if (!('options' in input)) return `${line}${KEY.enter}`;
  // what stands in an order stands in this one already
  if (input.kind === 'order') return KEY.enter;
  const wanted = new Set(line.split(', '));
  const rows = (itemsOf(ui, world) ?? []).flatMap(({ label }, index) => (wanted.has(label) ? [index] : []));
  expect(rows).toHaveLength(wanted.size);
  const to = (row: number): string => `${KEY.home}${KEY.down.repeat(row)}`;
  if (input.kind === 'choice') return `${to(rows[0] ?? 0)}${KEY.enter}`;
  return `${rows.map((row) => `${to(row)} `).join('')}${KEY.enter}`;
}
