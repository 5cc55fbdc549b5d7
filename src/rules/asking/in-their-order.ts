import type { Answers } from '../../questions/answers.ts';
import { QUESTIONS } from '../../questions/index.ts';

const PLACES: ReadonlyMap<string, number> = new Map(QUESTIONS.map(({ path }, place) => [path, place]));

/** By the order of the interview: answers about the first part come before the same about the second. */
export function inTheirOrder<Of extends { readonly answer: string }>(
  all: readonly Of[],
  { parts }: Answers,
): readonly Of[] {
  const placeOf = (answer: string): number => {
    const part = parts.findIndex(({ name }) => answer.startsWith(`parts[${name}].`));
    if (part < 0) return PLACES.get(answer) ?? QUESTIONS.length;
    const path = `parts.${answer.slice(`parts[${parts[part]?.name}].`.length)}`;
    const place = PLACES.get(path.replace(/^parts\.approaches\./, 'parts.')) ?? QUESTIONS.length;
    return (place + part * QUESTIONS.length) / (parts.length * QUESTIONS.length);
  };
  return all
    .map((each) => ({ each, place: placeOf(each.answer) }))
    .sort((a, b) => a.place - b.place)
    .map(({ each }) => each);
}
