import type { Writable } from 'node:stream';
import { isAnswered } from '../../session/kept.ts';
import type { Session } from '../../session/session.ts';
import type { World } from '../../session/world.ts';
import { OUTCOME_CODES } from '../outcome-codes.ts';
import { say } from './say.ts';

/** Signals that end the interview, and the exit code of each. */
export const SIGNAL_CODES = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129, SIGQUIT: 131 } as const;

/** An unfinished interview is open: unknown answers decide. */
const UNFINISHED = OUTCOME_CODES.open;

type Ending =
  | { readonly how: 'finished' | 'quit' | 'input' }
  | { readonly how: 'signal'; readonly signal: keyof typeof SIGNAL_CODES };

/** How an interview was left, by lines or on the screen. */
export interface Left {
  readonly session: Session;
  readonly ending: Ending;
}

export interface KeptIn {
  readonly sessionFile: string;
  /** as it was named by --session; null: the usual file */
  readonly named: string | null;
  /** false: what was answered last could not be written to it */
  readonly isSaved: boolean;
}

/** Says where the interview is kept and how to go on with it, and gives the exit code. */
export function farewell({ session, ending }: Left, world: World, file: KeptIn, stdout: Writable): number {
  const isKept = session.at.at !== 'resume' && isAnswered(session.kept);
  const isFinished = ending.how === 'finished' || (ending.how !== 'signal' && session.at.at === 'result');
  const again = `fivesides --resume${file.named === null ? '' : ` --session ${file.named}`}`;
  const where = !file.isSaved
    ? `Your answers are NOT saved: ${file.sessionFile} could not be written.`
    : isKept
      ? `Your answers are in ${file.sessionFile}; "${again}" goes on with them.`
      : 'Nothing new was answered, and nothing saved.';
  say(isFinished || ending.how === 'signal' ? where : `The interview is unfinished. ${where}`, stdout);
  if (ending.how === 'signal') return SIGNAL_CODES[ending.signal];
  const decision = isFinished ? world.decision(session.kept) : null;
  return decision === null ? UNFINISHED : OUTCOME_CODES[decision.outcome];
}
