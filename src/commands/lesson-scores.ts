import { notWritten, writeFileText } from '../documents/write-file.ts';
import type { KeptRuns } from '../teaching/lessons/kept-runs.ts';
import { scoresTable } from '../teaching/lessons/scores-table.ts';
import { inTheWay } from './in-the-way.ts';

interface ScoresFile {
  readonly path: string;
  /** as the user calls it */
  readonly shown: string;
  /** where runs are kept: never replaced by a table of them */
  readonly runs: string;
  readonly overwrite: boolean;
}

/** Writes the scores of all that is kept; what is to be said about it, and whether it went well. */
export function writeScores(
  kept: KeptRuns,
  { path, shown, runs, overwrite }: ScoresFile,
): { readonly ok: boolean; readonly says: string } {
  const why = inTheWay(path, { inputs: [runs], overwrite });
  if (why !== null) return { ok: false, says: `fivesides: ${shown}: ${why}. Nothing is written.` };
  const text = scoresTable(kept);
  const writing = writeFileText(path, text, { overwrite });
  if (!writing.ok) return { ok: false, says: `fivesides: ${shown} was not written: ${notWritten(writing)}.` };
  const steps = text.trimEnd().split('\r\n').length - 1;
  return { ok: true, says: `fivesides: ${steps} ${steps === 1 ? 'step' : 'steps'} written to ${shown}.` };
}
