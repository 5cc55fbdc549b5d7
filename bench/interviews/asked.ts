import type { Answers } from '../../src/questions/answers.ts';
import { QUESTIONS } from '../../src/questions/index.ts';
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

/** Plain facts that everything needs: asked first, without any reckoning. */
const BASIC: ReadonlySet<string> = new Set([
  ...[
    'own-mill',
    'matters',
    'name',
    'shape',
    'size',
    'diameter',
    'length',
    'stands',
    'material',
    'approaches',
  ],
  ...['slant', 'undercut', 'bottom', 'motion', 'must', 'held-by'],
  // while nobody says these, the ranking leaves them out: known, they may change who wins
  ...['shop-rate', 'vises-wanted'],
]);

export const isBasic = ({ question }: Asked): boolean => BASIC.has(question.id);

/** Whether it is asked at all, given what was answered. */
export const applies = ({ question, part }: Asked, answers: Answers): boolean =>
  question.id !== 'units' && question.applies(answers, part ?? 0);

/** The answers with what the shop says to this question. */
export const answeredWith = ({ question, part }: Asked, answers: Answers, truth: Answers): Answers =>
  question.set(answers, part ?? 0, question.get(truth, part ?? 0));

/**
 * Whether a question is about the value at this path, as open verdicts name it. Example: `parts[Cleat 1].size[0]` is
 * what the size of that part answers.
 */
export function isAbout({ question, part }: Asked, path: string, { parts }: Answers): boolean {
  const root = part === null ? null : `parts[${parts[part]?.name}].`;
  if (root !== null && !path.startsWith(root)) return false;
  if (root === null && path.startsWith('parts[')) return false;
  const own = root === null ? path : `parts.${path.slice(root.length)}`;
  const plain = own.replace(/\[\d+\]/g, '').replace(/^parts\.approaches\.(slant|undercut)$/, 'parts.$1');
  return plain === question.path;
}
