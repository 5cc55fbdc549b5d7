import type { Place } from '../../session/session.ts';
import type { Over, ResultView } from '../state/ui.ts';

/** What a key does. */
export type Action =
  | 'up'
  | 'down'
  | 'page-up'
  | 'page-down'
  | 'first'
  | 'last'
  | 'take'
  | 'toggle'
  | 'clear'
  | 'close'
  | 'back'
  | 'not-sure'
  | 'why'
  | 'jump'
  | 'find'
  | 'review'
  | 'parts'
  | 'result'
  | 'undo'
  | 'help'
  | 'add'
  | 'copy'
  | 'rename'
  | 'remove'
  | 'pick'
  | 'quit'
  | 'repaint'
  | 'suspend'
  | `view-${ResultView}`;

/** Where a key is pressed, as far as keys care. */
export interface Situation {
  readonly at: Place['at'];
  readonly over: Over['kind'] | null;
  /** letters are text here */
  readonly typing: boolean;
  /** something is typed already */
  readonly typed: boolean;
  /** rows of the list; 0: none */
  readonly rows: number;
  /** several rows can be taken */
  readonly several: boolean;
  readonly view: ResultView;
  /** something is looked at inside a view */
  readonly looking: boolean;
}
