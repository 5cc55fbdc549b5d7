import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** Legs of the sling. */
export const slingLegs = aboutShop<Uncertain>({
  id: 'sling-legs',
  section: 'lifting',
  title: 'Legs of the sling',
  path: 'shop.lifting.hoist.legs',
  ask: () => 'How many legs has the sling that a rotary would hang on?',
  hint: 'Chains or straps from the hook to the load; of more than two, two are reckoned to carry. Example: 2.',
  why: 'The load is shared by the legs, and so each has to carry a part of it.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'count', limits: { least: 1, most: 8, whole: true } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.hoist.legs'] },
  applies: (answers) => hasMeans(answers, 'hoist'),
  get: (answers) => meansBy(answers, 'hoist').legs,
  set: (answers, legs) => withMeans(answers, 'hoist', { legs }),
});
