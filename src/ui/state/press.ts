import type { World } from '../../session/world.ts';
import type { Key } from '../keys/key.ts';
import { actionOf } from '../keys/keymap.ts';
import { LONGEST_PASTE } from '../keys/paste.ts';
import { edited, LONGEST_TYPED } from '../keys/text-field.ts';
import { acted, numbered } from './act.ts';
import { happened } from './happened.ts';
import { pastedLines } from './pasted-lines.ts';
import { situationOf } from './situation.ts';
import type { Turn, Ui } from './ui.ts';

/**
 * One key: what the screen shows then, and what the shell has to do. Pure; throws `NotYet` where it hangs on a
 * decision that is still being worked out.
 */
export function press(ui: Ui, key: Key, world: World): Turn {
  if (key.kind === 'named' && key.name === 'ctrl-c') {
    if (ui.over?.kind === 'leave') return [ui, [{ kind: 'leave', how: 'interrupted' }]];
    return [{ ...ui, over: { kind: 'leave', under: ui.over } }, []];
  }
  const here = ui.over?.kind === 'leave' ? { ...ui, over: ui.over.under } : ui;
  const fresh: Ui = { ...here, said: null };
  if (key.kind === 'paste' && key.tooLong) return [{ ...fresh, said: LONG_PASTE }, []];
  const lines = key.kind === 'paste' && key.whole !== undefined ? key.whole : null;
  const table = lines === null ? null : pastedLines(fresh, lines, world);
  if (table !== null) return table;
  const situation = situationOf(fresh, world);
  const action = actionOf(key, situation);
  if (action === 'row' || action === 'place') {
    return [numbered(fresh, action, key.kind === 'text' ? Number(key.text) : 1, world), []];
  }
  if (action === 'look') {
    return happened(fresh, { type: 'look', variant: key.kind === 'text' ? key.text : '' }, world);
  }
  if (action !== null) return acted(fresh, action, world);
  if (situation.typing) {
    const field = edited(fresh.field, key);
    if (field === null) return [fresh, []];
    const full = field === fresh.field && key.kind !== 'named' && key.text !== '';
    if (full) return [{ ...fresh, said: FULL_FIELD }, []];
    const filters = fresh.over !== null && fresh.over.kind !== 'open';
    const said = lines === null ? null : FIRST_LINE;
    return [{ ...fresh, field, mark: filters ? 0 : fresh.mark, said }, []];
  }
  return [lines === null ? fresh : { ...fresh, said: NO_LINES }, []];
}

const FIRST_LINE = 'Several lines came at once: the first is typed here, the others are left out.';
const NO_LINES = 'Several lines came at once: they answer nothing here.';
const LONG_PASTE = `What was pasted is longer than ${LONGEST_PASTE / 1000} 000 characters: nothing of it is taken. A table of parts can also come from a file: fivesides --parts FILE.`;
const FULL_FIELD = `There is room for ${LONGEST_TYPED} characters: nothing more is typed.`;
