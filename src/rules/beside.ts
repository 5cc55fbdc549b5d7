import type { Decision } from './decision.ts';

/** One question that is not answered the same everywhere: the answer of each, in the order of the columns. */
export interface AnswerBeside {
  /** name of the part; null: about the shop */
  readonly part: string | null;
  readonly title: string;
  readonly words: readonly string[];
}

/** Decisions that are held against each other, each with its name, and what is not answered the same in all of them. */
export interface Beside {
  readonly columns: readonly { readonly name: string; readonly decision: Decision }[];
  readonly answers: readonly AnswerBeside[];
}
