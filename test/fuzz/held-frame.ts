import assert from 'node:assert/strict';
import type { World } from '../../src/session/world.ts';
import { plainFrame } from '../../src/ui/draw/plain-frame.ts';
import { frame } from '../../src/ui/frame/frame.ts';
import type { Size } from '../../src/ui/frame/size.ts';
import { widthOf } from '../../src/ui/look/cells.ts';
import { textOfRow } from '../../src/ui/look/row.ts';
import type { Ui } from '../../src/ui/state/ui.ts';
import { heldLine } from './held.ts';

/** A screen that fits its window, in which no row steers the terminal. */
export function heldFrame(ui: Ui, world: World, size: Size, ascii = false): void {
  const drawing = { world, ascii, color: true, sessionFile: 'kept.json', unsaved: null };
  const rows = frame(ui, size, drawing);
  assert.equal(rows.length, Math.max(1, size.rows - 1));
  for (const row of rows) {
    const text = textOfRow(row);
    heldLine(text);
    assert.ok(widthOf(text) <= size.columns, `wider than ${size.columns}: ${JSON.stringify(text)}`);
  }
  assert.ok(plainFrame(rows, '>') !== '');
}
