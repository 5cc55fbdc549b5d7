import { cut, fitRow } from '../look/cells.ts';
import { type Row, row } from '../look/row.ts';
import { LEAST_COLUMNS } from './context.ts';

/** Where it is kept, and why it is not: null where it is. */
interface KeptWhere {
  readonly sessionFile: string;
  readonly unsaved: string | null;
}

/** What Ctrl-C says: what is kept, and how to go on; of a long name of a file the end is in sight. */
export function leaveWords({ sessionFile, unsaved }: KeptWhere, width: number): string {
  if (width < LEAST_COLUMNS) return unsaved === null ? 'Saved. ^C leaves.' : 'Unsaved. ^C leaves.';
  const tail = ' Ctrl-C again leaves; another key goes on.';
  const room = width - tail.length;
  if (unsaved !== null) return `${cut(unsaved, room)}${tail}`;
  const file = sessionFile.length <= room - 10 ? sessionFile : `…${sessionFile.slice(-(room - 11))}`;
  return `Saved to ${file}.${tail}`;
}

/** The last line says it, whatever stood there. */
export const withLast = (rows: readonly Row[], words: string, width: number): readonly Row[] =>
  rows.with(rows.length - 1, fitRow(row(words, 'marked'), width));
