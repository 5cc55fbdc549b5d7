import type { Effect, Session } from '../../session/session.ts';
import type { Past } from '../../session/undo.ts';
import { NOTHING_TYPED, type TextField } from '../keys/text-field.ts';

export const RESULT_VIEWS = [
  'overview',
  'why',
  'why-not',
  'compare',
  'kinds',
  'options',
  'shop',
  'money',
  'trade-offs',
  'ranges',
  'stages',
  'papers',
  /** the list of all the others */
  'views',
] as const;
export type ResultView = (typeof RESULT_VIEWS)[number];

/** What lies over the screen for a moment. */
export type Over =
  /** how to begin: go on with what is saved, anew, or with an answers file */
  | { readonly kind: 'start' }
  | { readonly kind: 'open'; readonly error: string | null }
  | { readonly kind: 'help' }
  | { readonly kind: 'why' }
  /** everything that can be explained; and one of it, by its name */
  | { readonly kind: 'explain' }
  | { readonly kind: 'explained'; readonly topic: string }
  /** what is to be read besides what was said */
  | { readonly kind: 'lines' }
  /** the list of all questions: to go to one, or to try another answer to it */
  | { readonly kind: 'jump' }
  | { readonly kind: 'try' }
  /** the list of the screen, filtered by what is typed */
  | { readonly kind: 'find' }
  /** Ctrl-C was pressed once, over this */
  | { readonly kind: 'leave'; readonly under: Over | null };

/** All that the screen shows, as data. The session holds the answers; the rest is where the eye and the hand are. */
export interface Ui {
  readonly session: Session;
  readonly over: Over | null;
  readonly field: TextField;
  /** the row of the list that is highlighted */
  readonly mark: number;
  /** of options of which several can be taken: those that are, in order */
  readonly chosen: readonly number[];
  /** rows of a long text that are scrolled past */
  readonly scroll: number;
  readonly view: ResultView;
  /** an arrangement that is looked at */
  readonly looked: string | null;
  /** arrangements that are compared, at most three */
  readonly compared: readonly string[];
  /** as it was before each of the last changes of an answer, the newest last */
  readonly history: Past;
  readonly said: string | null;
}

export const MOST_COMPARED = 3;

/** What a key asks the shell for. */
export type Request =
  | { readonly kind: 'effect'; readonly effect: Effect }
  | { readonly kind: 'open'; readonly file: string }
  | { readonly kind: 'leave'; readonly how: 'quit' | 'interrupted' }
  | { readonly kind: 'suspend' }
  | { readonly kind: 'repaint' };

export type Turn = readonly [Ui, readonly Request[]];

export const effectOf = (effect: Effect): Request => ({ kind: 'effect', effect });

export const beginning = (session: Session, over: Over | null): Ui => ({
  session,
  over,
  field: NOTHING_TYPED,
  mark: 0,
  chosen: [],
  scroll: 0,
  view: 'overview',
  looked: null,
  compared: [],
  history: [],
  said: null,
});
