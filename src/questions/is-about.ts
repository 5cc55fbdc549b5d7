import type { Answers } from './answers.ts';
import type { Question } from './question.ts';

/**
 * Whether a question, asked about the shop (null) or about one of the parts, is about the value at this path, as open
 * verdicts name it. Example: `parts[Cleat].size[0]` is what the size of that part answers.
 */
export function isAbout(question: Question, part: number | null, path: string, { parts }: Answers): boolean {
  const root = part === null ? null : `parts[${parts[part]?.name}].`;
  if (root !== null && !path.startsWith(root)) return false;
  if (root === null && path.startsWith('parts[')) return false;
  const own = root === null ? path : `parts.${path.slice(root.length)}`;
  const plain = own.replace(/\[\d+\]/g, '').replace(/^parts\.approaches\.(slant|undercut)$/, 'parts.$1');
  return plain === question.path;
}
