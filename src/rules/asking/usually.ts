import type { Interval } from '../../quantities/interval.ts';
import type { Uncertain } from '../../questions/answers.ts';

/**
 * The part of a range that is usual; where none of it is, the range as it is. Example: unknown, 2 to 6 → [2, 6];
 * [4, 9], 2 to 6 → [4, 6]; 3, 2 to 6 → 3.
 */
export function usually(answer: Uncertain, { low, high }: Interval): Uncertain {
  if (typeof answer === 'number') return answer;
  if (answer === 'unknown') return [low, high];
  const ends = [Math.max(low, answer[0]), Math.min(high, answer[1])] as const;
  return ends[0] <= ends[1] ? ends : answer;
}
