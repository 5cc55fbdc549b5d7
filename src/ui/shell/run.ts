import type { Effect, Event, Session } from '../../session/session.ts';
import type { World } from '../../session/world.ts';
import { ScreenRun } from './screen-run.ts';
import type { ScreenEnding } from './terminal-page.ts';

export interface ScreenLeft {
  readonly session: Session;
  readonly ending: ScreenEnding;
}

/** What the screen needs from outside. */
export interface Surroundings {
  readonly stdin: NodeJS.ReadStream;
  readonly stdout: NodeJS.WriteStream;
  readonly world: World;
  readonly ascii: boolean;
  readonly color: boolean;
  readonly sessionFile: string;
  /** what is said of the answers when Ctrl-C is pressed; null: they are saved */
  readonly unsaved: (session: Session) => string | null;
  readonly perform: (effect: Exclude<Effect, { kind: 'finish' }>, session: Session) => readonly Event[];
  readonly open: (file: string, session: Session) => Session | { readonly why: string };
  /** decides what was asked for while drawing; null: everything is decided at once */
  readonly judge: { readonly forget: () => void; readonly work: () => void } | null;
  /** takes what is to be done when a decision has come */
  readonly onDecision: (redo: () => void) => void;
}

/**
 * The interview on the whole screen, until it is finished or left; the terminal is then as it was.
 * `starts`: it is asked first how to begin.
 */
export const runScreen = (session: Session, starts: boolean, around: Surroundings): Promise<ScreenLeft> =>
  new ScreenRun(session, starts, around).run();
