import type { Answers } from './answers.ts';
import type { Question } from './question.ts';

/**
 * Path of what a question answers, about the shop (null) or about one of the parts, without its indices.
 * Example: the size of the part Cleat → 'parts[Cleat].size'.
 */
export const answerPath = ({ path }: Question, part: number | null, { parts }: Answers): string =>
  part === null ? path : `parts[${parts[part]?.name}].${path.replace(/^parts\./, '')}`;
