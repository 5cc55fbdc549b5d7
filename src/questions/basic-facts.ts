import type { Question } from './question.ts';

/** Plain facts that everything needs: asked first, in the order of the interview, without any reckoning. */
const BASIC_FACTS: ReadonlySet<string> = new Set([
  ...['units', 'own-mill', 'matters'],
  ...['name', 'shape', 'size', 'diameter', 'length', 'stands', 'material'],
  ...['approaches', 'slant', 'undercut', 'bottom', 'motion', 'must', 'held-by'],
  // while nobody says these, the ranking leaves them out: known, they may change who wins
  ...['shop-rate', 'vises-wanted'],
]);

/** Whether a question is asked of everybody. Example: the size of a part is, the rating of the floor is not. */
export const isBasicFact = ({ id }: Question): boolean => BASIC_FACTS.has(id);
