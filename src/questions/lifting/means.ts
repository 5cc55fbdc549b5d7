import type { Answers, Lifting } from '../answers.ts';

/** A means of lifting of which only the kind is known. */
export const BLANK_MEANS: Omit<Lifting, 'by'> = {
  capacity: 'unknown',
  hookHeight: 'unknown',
  legs: 'unknown',
  slingAngle: 'unknown',
  slingHeight: 'unknown',
  rigging: 'unknown',
  loadCenter: 'unknown',
  people: 'unknown',
  reach: 'unknown',
  from: 'unknown',
  lift: 'unknown',
};

export const isMeans = (word: string): word is Lifting['by'] =>
  word === 'hand' || word === 'hoist' || word === 'forklift';

const listed = ({ shop: { lifting } }: Answers): readonly Lifting[] => (lifting === 'unknown' ? [] : lifting);

export const hasMeans = (answers: Answers, by: Lifting['by']): boolean =>
  listed(answers).some((each) => each.by === by);

/** What is known of the first means of a kind: the interview speaks of one each, an answers file may name more. */
export const meansBy = (answers: Answers, by: Lifting['by']): Lifting =>
  listed(answers).find((each) => each.by === by) ?? { by, ...BLANK_MEANS };

/** With more known of the first means of a kind; one that is not there yet is put in. Others stay as they are. */
export function withMeans(answers: Answers, by: Lifting['by'], known: Partial<Omit<Lifting, 'by'>>): Answers {
  const means = listed(answers);
  const first = means.findIndex((each) => each.by === by);
  const changed: Lifting = { ...meansBy(answers, by), ...known };
  const lifting = first < 0 ? [...means, changed] : means.with(first, changed);
  return { ...answers, shop: { ...answers.shop, lifting } };
}
