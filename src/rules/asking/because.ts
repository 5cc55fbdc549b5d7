import type { Asking } from './asking.ts';

/** Why a question is asked now, in numbers. */
export type Because =
  | {
      readonly kind: 'narrows';
      /** arrangements that may win and that it bears on */
      readonly touches: number;
      /** it moves their order only */
      readonly ordersOnly: boolean;
      /** arrangements that may win, of those that were looked at */
      readonly left: number;
      /** of so many that may pass only a few were looked at; null: all of them were */
      readonly outOf: number | null;
      /** no other question can change the result any more */
      readonly alone: boolean;
    }
  /** it would not be asked */
  | ({ readonly kind: 'settled'; readonly taken: string | null } & Settled);

/** How the result stands without the questions that are not asked. */
export interface Settled {
  readonly outcome: Asking['outcome'];
  /** they cannot change it any more; otherwise nothing hangs on them so far, and other answers may alter that */
  readonly isProven: boolean;
  /** only a few of many arrangements were looked at */
  readonly byFew: boolean;
}
