import type { Given, Kept, Subject } from './kept.ts';

/** Where the interview stands: what it waits for. */
export type Place =
  /** a saved interview was found: go on with it, or begin anew */
  | { readonly at: 'resume' }
  | { readonly at: 'question'; readonly id: string; readonly subject: Subject }
  /** which question comes next is being worked out */
  | { readonly at: 'next' }
  /** the list of parts: add, copy, edit, remove, or go on */
  | { readonly at: 'parts' }
  | { readonly at: 'remove'; readonly part: number }
  /** every answer, or those about one part */
  | { readonly at: 'review'; readonly part: Subject }
  | { readonly at: 'result' }
  /** where to write a file */
  | { readonly at: 'file'; readonly what: Written }
  /** the file is there already */
  | { readonly at: 'overwrite'; readonly what: Written; readonly file: string }
  /** other answers are tried: what they change */
  | { readonly at: 'trial' }
  /** a name for what is tried, under which it stays */
  | { readonly at: 'naming' }
  /** the variants beside the answers of the interview */
  | { readonly at: 'variants' }
  | { readonly at: 'done' };

/** What can be written to a file of the user's choice. */
export type Written =
  | 'answers'
  | 'report'
  | 'decision'
  | 'half-page'
  | 'site-sheet'
  | 'quote-sheets'
  | 'variants';

/** What the last event brought about, for the shell to say. */
type Note =
  | {
      readonly kind: 'accepted';
      readonly id: string;
      readonly subject: Subject;
      readonly given: Given;
      /** what was kept before it */
      readonly before: Kept;
    }
  /** what was typed, and one sentence on what is accepted */
  | { readonly kind: 'error'; readonly typed: string; readonly why: string }
  /** `lines`: what is to be read besides, one thing a line */
  | { readonly kind: 'said'; readonly words: string; readonly lines?: readonly string[] };

/** What was gone away from on request, to be come back to. */
export interface Detour {
  readonly from: Place;
  /** what was gone to */
  readonly to: Place;
  /** as it was then: questions that have opened since are asked before coming back */
  readonly kept: Kept;
}

/** Whether only what can still change the result is asked, or every question in a fixed order. */
export type Asks = 'needed' | 'all';

/** Other answers that were given a name, to be held against those of the interview. */
export interface Variant {
  readonly name: string;
  readonly kept: Kept;
}

/** Other answers are tried; those of the interview wait until they are kept or dropped. */
export interface Trial {
  readonly before: Pick<Session, 'kept' | 'at' | 'detours' | 'trail'>;
  /** the variant that is looked at; null: none */
  readonly of: string | null;
}

/** The conversation as data. Answers, what is tried, the place and how it asks are saved; the rest is about the last event, or the way here. */
export interface Session {
  /** while something is tried, with what is tried */
  readonly kept: Kept;
  readonly at: Place;
  /** innermost last */
  readonly detours: readonly Detour[];
  readonly note: Note | null;
  /** folders of the catalog; none: the demo catalog */
  readonly catalogs: readonly string[];
  readonly asks: Asks;
  /** what was gone on from, each place once, in the order in which that was done first */
  readonly trail: readonly Place[];
  /** null: nothing is tried */
  readonly trial: Trial | null;
  /** at most three, each with another name */
  readonly variants: readonly Variant[];
}

export type Event =
  /** typed where the interview stands */
  | { readonly type: 'reply'; readonly text: string }
  /** takes what is shown: the current answer, the usual one, the next step */
  | { readonly type: 'accept' }
  | { readonly type: 'not-sure' }
  /** which question comes next may be known now */
  | { readonly type: 'next' }
  /** how to ask from now on; null: the other way */
  | { readonly type: 'ask'; readonly asks: Asks | null }
  | { readonly type: 'back' }
  | { readonly type: 'go'; readonly to: Place }
  /** to a question by its number in the review, or words of its title; to a part by its name */
  | { readonly type: 'find'; readonly text: string }
  | { readonly type: 'add-part' }
  | { readonly type: 'copy-part'; readonly part: number }
  | { readonly type: 'edit-part'; readonly part: number }
  | { readonly type: 'remove-part'; readonly part: number }
  | { readonly type: 'rename-part'; readonly part: number }
  /** adds the parts of a table: as a text, or as a file that the shell reads and hands over */
  | { readonly type: 'table'; readonly text: string }
  | { readonly type: 'read-table'; readonly file: string }
  | { readonly type: 'not-read'; readonly file: string; readonly why: string }
  /** tries another answer to a question, by its place or by words of its title */
  | { readonly type: 'try'; readonly to: Place }
  | { readonly type: 'try-find'; readonly text: string }
  /** what is tried becomes the answers of the interview, or is forgotten */
  | { readonly type: 'keep' }
  | { readonly type: 'drop' }
  /** puts what is tried aside as a variant; asks for a name unless one is given */
  | { readonly type: 'name'; readonly name: string | null }
  /** a variant by its number, its name, or the beginning of that */
  | { readonly type: 'look'; readonly variant: string }
  | { readonly type: 'keep-variant'; readonly variant: string }
  | { readonly type: 'remove-variant'; readonly variant: string }
  /** asks where, unless a file is named */
  | {
      readonly type: 'write';
      readonly what: Written;
      readonly file: string | null;
    }
  /** the shell on what became of a file */
  | { readonly type: 'written'; readonly what: Written; readonly file: string }
  | { readonly type: 'exists'; readonly what: Written; readonly file: string }
  | {
      readonly type: 'not-written';
      readonly what: Written;
      readonly file: string;
      readonly why: string;
    };

/** What the shell has to do; the session does nothing itself. */
export type Effect =
  /** keep the session where it can be resumed */
  | { readonly kind: 'save' }
  /** write answers or report; unless `overwrite`, not over a file that is there */
  | {
      readonly kind: 'write';
      readonly what: Written;
      readonly file: string;
      readonly overwrite: boolean;
    }
  /** read a table of parts and hand over its text */
  | { readonly kind: 'read'; readonly file: string }
  /** the interview is finished: the outcome gives the exit code */
  | { readonly kind: 'finish' };

export type Step = readonly [Session, readonly Effect[]];

/** Stays where it is and says why. */
export const refused = (session: Session, typed: string, why: string): Step => [
  { ...session, note: { kind: 'error', typed, why } },
  [],
];
