import { readFileText } from '../documents/read-file.ts';
import type { Event, Session } from '../session/session.ts';
import { step } from '../session/step.ts';
import type { World } from '../session/world.ts';
import { filePath } from './file-path.ts';

/** More than any table of parts. */
const LARGEST_TABLE = 1_000_000;

/** The text of a table of parts, or why it is not read. */
export function readTable(file: string, cwd: string): Event {
  const reading = readFileText(filePath(file, cwd), LARGEST_TABLE);
  if (reading.ok) return { type: 'table', text: reading.value };
  const [first] = reading.problems;
  return { type: 'not-read', file, why: first === undefined ? 'it cannot be read' : first.found };
}

type WithParts =
  | { readonly ok: true; readonly session: Session }
  /** a sentence */
  | { readonly ok: false; readonly why: string };

/** An interview with the parts of a table in it. */
export function withParts(file: string, session: Session, world: World, cwd: string): WithParts {
  const [next] = step(session, readTable(file, cwd), world);
  return next.note?.kind === 'error' ? { ok: false, why: next.note.why } : { ok: true, session: next };
}
