import type { Asked } from './asked.ts';

/**
 * What the fixed order asks before anything else, as it was when the promise was made: it stays as it is. Shop rate and
 * vises came in afterwards, before any figure was reported: both are held against nothing while nobody names them, and
 * without them the fixed order ends with a result that the whole answers do not give.
 */
const FIXED_FACTS: ReadonlySet<string> = new Set([
  ...['own-mill', 'matters'],
  ...['name', 'shape', 'size', 'diameter', 'length', 'stands', 'material'],
  ...['approaches', 'slant', 'undercut', 'bottom', 'motion', 'must', 'held-by'],
  ...['shop-rate', 'vises-wanted'],
]);

export const isFixedFact = ({ question }: Asked): boolean => FIXED_FACTS.has(question.id);
