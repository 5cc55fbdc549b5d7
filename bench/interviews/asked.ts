import type { Answers } from '../../src/questions/answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
import { isAbout as isAboutPath } from '../../src/questions/is-about.ts';
import type { Question } from '../../src/questions/question.ts';

/** A question about the shop (null) or about one of the parts. */
export interface Asked {
  readonly question: Question;
  readonly part: number | null;
}

/** Every question of an interview about so many parts, in the order of the interview. */
export function everyQuestion(parts: number): readonly Asked[] {
  const ofParts = QUESTIONS.filter((question) => question.of === 'part');
  const first = QUESTIONS.findIndex((question) => question.of === 'part');
  const shop = (questions: readonly Question[]): readonly Asked[] =>
    questions.filter((question) => question.of === 'shop').map((question) => ({ question, part: null }));
  return [
    ...shop(QUESTIONS.slice(0, first)),
    ...Array.from({ length: parts }, (_, part) => ofParts.map((question) => ({ question, part }))).flat(),
    ...shop(QUESTIONS.slice(first)),
  ];
}

/** Whether it is asked at all, given what was answered. */
export const applies = ({ question, part }: Asked, answers: Answers): boolean =>
  question.id !== 'units' && question.applies(answers, part ?? 0);

/** The answers with what the shop says to this question. */
export const answeredWith = ({ question, part }: Asked, answers: Answers, truth: Answers): Answers =>
  question.set(answers, part ?? 0, question.get(truth, part ?? 0));

/** Whether it is about the value at this path. */
export const isAbout = ({ question, part }: Asked, path: string, answers: Answers): boolean =>
  isAboutPath(question, part, path, answers);
