import { expect, test, vi } from 'vitest';
import { perform } from '../../../src/commands/plain/perform.ts';
import { SessionKeeper } from '../../../src/commands/session-keeper.ts';
import type { Decision } from '../../../src/rules/decision.ts';
import { createWorld } from '../../../src/session/world.ts';
import { NotYet } from '../../../src/ui/state/not-yet.ts';
import { beginning, type Ui } from '../../../src/ui/state/ui.ts';
import { fixtureDecision } from '../../report/fixture.ts';
import { FAKE_CATALOG } from '../../session/fake-engine.ts';
import { oneBlock } from '../../session/talk.ts';
import { folderWith } from '../../temporary-folder.ts';
import { textFrame } from '../demo-screens.ts';
import { goneTo } from '../every-screen.ts';
import { after } from '../pressing.ts';

let isPending = true;
const decided = fixtureDecision();

/** Ranges are there only where they are asked for, and not at once. */
const world = createWorld(FAKE_CATALOG, (_answers, _catalog, { ranges }) => {
  if (ranges === true && isPending) throw new NotYet();
  return { ...decided, stability: ranges === true ? decided.stability : [] };
});

const SIZE = { columns: 80, rows: 24 };
const result = (): Ui => goneTo(beginning(oneBlock().session, null), { at: 'result' }, world);
const shown = (ui: Ui): string => textFrame(ui, SIZE, world).join('\n');

test('the view says that ranges are being worked out, and shows them once they are there', () => {
  isPending = true;
  const ui = after(result(), world, 'h');
  expect(ui.view).toBe('ranges');
  expect(shown(ui)).toContain('How far each answer may move');
  expect(shown(ui)).toContain('This is being worked out.');
  // no other view waits for them
  expect(shown(after(ui, world, 'o'))).toContain('is recommended');
  isPending = false;
  expect(shown(ui)).toMatch(/longest tool +180 mm +150 mm +214 mm +\(-+o-+\)/);
});

test('the list of views names it', () => {
  isPending = false;
  expect(shown(after(result(), world, 'v'))).toContain('h  How far each answer may move');
});

test('what holds all of it is written with ranges, a paper without', () => {
  isPending = false;
  const written = vi.fn((_decision: Decision) => '');
  const disk = {
    markdown: written,
    json: written,
    paper: written,
    keeper: new SessionKeeper('', null),
    cwd: folderWith({}),
    warn: () => undefined,
  };
  for (const [what, file] of [
    ['report', 'a.md'],
    ['decision', 'a.json'],
    ['half-page', 'b.md'],
  ] as const) {
    perform({ kind: 'write', what, file, overwrite: false }, result().session, world, disk);
  }
  expect(written.mock.calls.map(([{ stability }]) => stability.length)).toEqual([1, 1, 0]);
});
