import assert from 'node:assert/strict';
import { readSaved, type Saved, savedOf } from '../../../src/session/saved.ts';
import { screenOf } from '../../../src/session/screen.ts';
import { offered, resumed } from '../../../src/session/start.ts';
import { step } from '../../../src/session/step.ts';
import { beginning } from '../../../src/ui/state/ui.ts';
import { heldFrame } from '../held-frame.ts';
import type { FuzzedInput } from './input.ts';
import { BLANK, FILLED, SMALL_WORLD } from './small-world.ts';

const asBytes = (saved: Saved): Uint8Array => Buffer.from(`${JSON.stringify(saved, null, 2)}\n`);

/** Answers without parts at the end that nothing was said of: whoever goes on to the first part has begun one. */
function said({ answers }: Saved) {
  const last = answers.parts.findLastIndex((part) => Object.keys(part).length > 0);
  return { ...answers, parts: answers.parts.slice(0, last + 1) };
}

/** A saved interview: refused in words, or gone on with, drawn, answered and saved again. */
export const SESSION: FuzzedInput = {
  name: 'session',
  share: 160,
  seeds: () => {
    const [trying] = step(
      FILLED,
      { type: 'try', to: { at: 'question', id: 'budget', subject: null } },
      SMALL_WORLD,
    );
    const [tried] = step(trying, { type: 'reply', text: '90000' }, SMALL_WORLD);
    const { base: _, ...typed } = FILLED.kept;
    return [BLANK, FILLED, { ...FILLED, kept: typed }, tried].map((session) => asBytes(savedOf(session)));
  },
  take: (bytes) => {
    const reading = readSaved(bytes.toString('utf8'));
    if (!reading.ok) {
      assert.ok(reading.why.trim() !== '');
      return 'refused';
    }
    const { saved } = reading;
    const again = readSaved(JSON.stringify(savedOf(resumed(saved, SMALL_WORLD, saved.catalogs, null))));
    assert.ok(again.ok, 'what is saved again cannot be read');
    assert.deepStrictEqual(said(again.saved), said(saved), 'answers are lost on the way');
    for (const session of [
      resumed(saved, SMALL_WORLD, saved.catalogs, null),
      offered(saved, saved.catalogs, null),
    ]) {
      assert.doesNotMatch(JSON.stringify(screenOf(session, SMALL_WORLD)), /undefined/);
      heldFrame(beginning(session, null), SMALL_WORLD, { columns: 80, rows: 24 });
      const [next] = step(session, { type: 'reply', text: 'not sure' }, SMALL_WORLD);
      heldFrame(beginning(next, null), SMALL_WORLD, { columns: 60, rows: 20 });
    }
    for (const folder of saved.catalogs) assert.equal(typeof folder, 'string');
    return 'taken';
  },
};
