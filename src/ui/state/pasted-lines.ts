import { readPartsTable } from '../../questions/table/read-parts-table.ts';
import { isBegun } from '../../session/kept.ts';
import { unitsOf, type World } from '../../session/world.ts';
import { happened } from './happened.ts';
import type { Turn, Ui } from './ui.ts';

/**
 * What several pasted lines do: on the list of parts, and where the first name of a part is asked, a table of parts is taken
 * in. They never answer a question. Null where they are typed, the first of them, into what is being typed.
 */
export function pastedLines(ui: Ui, text: string, world: World): Turn | null {
  const { at, kept } = ui.session;
  if (ui.over !== null) return null;
  if (at.at === 'parts') return happened(ui, { type: 'table', text }, world);
  if (at.at !== 'question') return null;
  const context = { units: unitsOf(kept), offer: world.setting.offer };
  if (!readPartsTable(text, context).known) return null;
  if (at.subject !== null && !isBegun(kept.parts[at.subject]))
    return happened(ui, { type: 'table', text }, world);
  return [{ ...ui, said: ELSEWHERE }, []];
}

const ELSEWHERE =
  'That is a table of parts, and answers no question: go to the list of parts (Ctrl-P) and paste it there.';
