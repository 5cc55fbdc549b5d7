import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** Load center of the rating. */
export const loadCenter = aboutShop<Uncertain>({
  id: 'load-center',
  section: 'lifting',
  title: 'Load center',
  path: 'shop.lifting.forklift.loadCenter',
  ask: () => 'At which load center may the forklift lift as much as its plate says?',
  hint: 'It stands beside the weight on the plate: how far out on the forks the middle of the load may be. Example: 500 mm.',
  hintInch:
    'It stands beside the weight on the plate: how far out on the forks the middle of the load may be. Example: 24 in.',
  why: 'A rotary is reached into the machine further out than that, where the truck may lift less.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1e4 } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.forklift.loadCenter'] },
  applies: (answers) => hasMeans(answers, 'forklift'),
  get: (answers) => meansBy(answers, 'forklift').loadCenter,
  set: (answers, loadCenter) => withMeans(answers, 'forklift', { loadCenter }),
});
