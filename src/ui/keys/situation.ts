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
  /** the digit says which */
  | 'row'
  /** of rows in an order: the digit says where to */
  | 'place'
  | 'raise'
  | 'yes'
  | 'no'
  | 'take'
  | 'toggle'
  | 'clear'
  | 'close'
  | 'back'
  | 'not-sure'
  | 'why'
  | 'explain'
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
  | 'ask'
  | 'what-if'
  | 'keep'
  | 'drop'
  | 'name'
  | 'variants'
  /** the digit says which */
  | 'look'
  | 'take-out'
  | 'write-variants'
  | 'quit'
  | 'repaint'
  | 'suspend'
  | `view-${ResultView}`;

/** Where a key is pressed, as far as keys care. */
export interface Situation {
  readonly at: Place['at'];
  readonly over: Over['kind'] | null;
  /** how the question is answered; null where none is asked */
  readonly input: 'choice' | 'list' | 'order' | 'yes-no' | 'text' | 'quantity' | null;
  /** letters are text here */
  readonly typing: boolean;
  /** something is typed already */
  readonly typed: boolean;
  /** rows of the list; 0: none */
  readonly rows: number;
  readonly view: ResultView;
  /** something is looked at inside a view */
  readonly looking: boolean;
  /** other answers are tried, and those are of a variant */
  readonly tries: boolean;
  readonly ofVariant: boolean;
  readonly variants: number;
}
