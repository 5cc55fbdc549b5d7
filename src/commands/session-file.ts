import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { describeProblem } from '../documents/problem.ts';
import { readFileText } from '../documents/read-file.ts';
import { thereAt } from '../documents/there-at.ts';
import { LINK_THERE } from '../documents/write-file.ts';
import { readSaved, type Saved } from '../session/saved.ts';

/** The file that an interview is kept in unless another is named. */
export function usualSessionFile(env: Readonly<Record<string, string | undefined>>): string {
  const { XDG_STATE_HOME: state } = env;
  const folder = state === undefined || state === '' ? join(homedir(), '.local', 'state') : resolve(state);
  return join(folder, 'fivesides', 'session.json');
}

export type SessionFileReading =
  | { readonly found: 'none' }
  | { readonly found: 'interview'; readonly saved: Saved; readonly text: string }
  /** there is a file, but not one to go on with: it is left alone */
  | { readonly found: 'unusable'; readonly why: string };

export function readSessionFile(file: string): SessionFileReading {
  const there = thereAt(file);
  if (there === null) return { found: 'none' };
  if (there.isSymbolicLink()) return { found: 'unusable', why: `${file}: ${LINK_THERE}` };
  const text = readFileText(file);
  if (!text.ok) return { found: 'unusable', why: text.problems.map(describeProblem).join('; ') };
  const reading = readSaved(text.value);
  return reading.ok
    ? { found: 'interview', saved: reading.saved, text: text.value }
    : { found: 'unusable', why: `${file}: ${reading.why}` };
}
