import { formatQuantity } from '../quantities/format-quantity.ts';
import type { LengthUnits } from '../quantities/kinds.ts';
import type { Question, Value } from '../questions/question.ts';
import { asksSize } from './survey.ts';

/**
 * What is worth a word about an answer that is taken all the same: a part that is longer than anything in the catalog has
 * room for, which may be a slip. A range counts by its lower end. Example: 5000 mm where the longest table has 1800 mm.
 */
export function remarkOn(
  question: Question,
  value: Value,
  { longest, units }: { readonly longest: number | null; readonly units: LengthUnits },
): string | null {
  if (!asksSize(question) || longest === null) return null;
  const greatest = Math.max(...lowEnds(value));
  if (!(greatest > longest)) return null;
  const inWords = (length: number): string =>
    formatQuantity(length, 'mm', { shownIn: units, beside: true, first: units });
  return (
    `${inWords(greatest)} is longer than every table, travel and swing in the catalog: the longest is ` +
    `${inWords(longest)}. It is taken as typed; go back if it is a slip.`
  );
}

/** Numbers of an answer, of a range its lower end. */
function lowEnds(value: Value): readonly number[] {
  if (typeof value === 'number') return [value];
  if (!Array.isArray(value)) return [];
  // three numbers of a size, each of which may be a range, or one range
  const [first, second, ...rest] = value;
  if (rest.length === 0 && typeof first === 'number' && typeof second === 'number') return [first];
  return value.flatMap((each) =>
    typeof each === 'number' ? [each] : Array.isArray(each) ? lowEnds(each) : [],
  );
}
