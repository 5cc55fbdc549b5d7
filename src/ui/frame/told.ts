import { wrapped } from '../look/cells.ts';
import { EMPTY, type Row, row } from '../look/row.ts';
import type { Ui } from '../state/ui.ts';
import type { Context } from './context.ts';
import { written } from './written.ts';

/** What the last key brought about, over a text; nothing where there is nothing to say. */
export function toldRows({ session: { note }, said }: Ui, { width, ascii }: Context): readonly Row[] {
  const words = said ?? (note?.kind === 'said' ? note.words : note?.kind === 'error' ? note.why : null);
  if (words === null) return [];
  const tone = said === null && note?.kind === 'error' ? 'error' : 'strong';
  return [...wrapped(written(words, ascii), width).map((line) => row(line, tone)), EMPTY];
}
