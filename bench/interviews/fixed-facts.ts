import type { Asked } from './asked.ts';

/** What the fixed order asks before anything else, as it was when the promise was made: it stays as it is. */
const FIXED_FACTS: ReadonlySet<string> = new Set([
  ...['own-mill', 'matters'],
  ...['name', 'shape', 'size', 'diameter', 'length', 'stands', 'material'],
  ...['approaches', 'slant', 'undercut', 'bottom', 'motion', 'must', 'held-by'],
  ...['shop-rate', 'vises-wanted'],
]);

export const isFixedFact = ({ question }: Asked): boolean => FIXED_FACTS.has(question.id);
