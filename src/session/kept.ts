import type { Value } from '../questions/question.ts';

/** One answer as it was given. A 'not sure' stands for what its question says. */
export type Given =
  | { readonly from: 'typed' | 'usual'; readonly value: Value }
  | { readonly from: 'not sure' };

/** Answers by the id of their question. Those of questions that do not apply now stay where they are. */
export type GivenAnswers = Readonly<Record<string, Given>>;

/** An answers file that the interview goes on from: it says what no question asks, and what nobody has changed. */
export interface Base {
  readonly text: string;
  /** for each part of the interview, which part of the file it was; null: it was not there */
  readonly parts: readonly (number | null)[];
}

/** All that the user said: the only state of the interview besides the place where it stands. */
export interface Kept {
  readonly shop: GivenAnswers;
  readonly parts: readonly GivenAnswers[];
  readonly base?: Base;
}

export const NOTHING_KEPT: Kept = { shop: {}, parts: [] };

/** What a question is asked about: the shop as a whole (null), or the part with this index. */
export type Subject = number | null;

/** What was answered; undefined where the question is open. */
export function givenAt(kept: Kept, subject: Subject, id: string): Given | undefined {
  const answers = subject === null ? kept.shop : kept.parts[subject];
  return answers !== undefined && Object.hasOwn(answers, id) ? answers[id] : undefined;
}

/** Whether a part has an answer: one without any is none. */
export const isBegun = (part: GivenAnswers | undefined): boolean => Object.keys(part ?? {}).length > 0;

/** Whether anything was answered. */
export const isAnswered = ({ shop, parts }: Kept): boolean => parts.length > 0 || isBegun(shop);

/** The same answers with one more, or one changed. */
export function withGiven(kept: Kept, subject: Subject, id: string, given: Given): Kept {
  if (subject === null) return { ...kept, shop: { ...kept.shop, [id]: given } };
  const answers = kept.parts[subject];
  if (answers === undefined) throw new RangeError(`there is no part ${subject}`);
  return {
    ...kept,
    parts: kept.parts.with(subject, { ...answers, [id]: given }),
  };
}
