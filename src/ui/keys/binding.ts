import type { Place } from '../../session/session.ts';
import type { ResultView } from '../state/ui.ts';
import type { Action, Situation } from './situation.ts';

/** A key, what it does, where, and how that is said. */
export interface Binding {
  readonly action: Action;
  /** as they are handed over: a name, or a character */
  readonly keys: readonly string[];
  /** on the last line: the key, and in a word or two what it does; null: only in the help */
  readonly shown: readonly [key: string, does: string] | null;
  /** in the help: the keys, and what they do */
  readonly help: readonly [keys: string, does: string];
  readonly where: (here: Situation) => boolean;
}

export const free = ({ over }: Situation): boolean => over === null;
export const letters = (here: Situation): boolean => free(here) && !here.typing;
export const idle = (here: Situation): boolean => free(here) && !here.typed;
export const listed = ({ rows }: Situation): boolean => rows > 0;
export const asked = (here: Situation): boolean => free(here) && here.at === 'question';
export const result = (here: Situation): boolean => letters(here) && here.at === 'result';
export const reading = (here: Situation): boolean =>
  here.over === 'help' || here.over === 'why' || (here.at === 'result' && here.over === null);
export const working = (here: Situation): boolean => here.at !== 'resume';
export const lettersBut = (at: Place['at']) => (here: Situation) =>
  letters(here) && here.at !== at && working(here);
export const LONG_LIST = 9;

export const binding = (
  action: Action,
  keys: readonly string[],
  shown: Binding['shown'],
  help: Binding['help'],
  where: Binding['where'],
): Binding => ({ action, keys, shown, help, where });

/** A view of the result, by one letter. */
export const view = (to: ResultView, key: string, does: string, help: string): Binding =>
  binding(`view-${to}`, [key], [key, does], [key, help], result);
