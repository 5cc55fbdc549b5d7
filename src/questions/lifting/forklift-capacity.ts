import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** What the forklift may lift. */
export const forkliftCapacity = aboutShop<Uncertain>({
  id: 'forklift-capacity',
  section: 'lifting',
  title: 'Forklift capacity',
  path: 'shop.lifting.forklift.capacity',
  ask: () => 'How much may the forklift lift?',
  hint: 'As on its plate, at the height of a machine table. Example: 1500 kg.',
  hintInch: 'As on its plate, at the height of a machine table. Example: 3000 lb.',
  why: 'The rotary with its plate must not weigh more, and less counts where it sits far out on the forks.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'mass', limits: { above: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.forklift.capacity'] },
  applies: (answers) => hasMeans(answers, 'forklift'),
  get: (answers) => meansBy(answers, 'forklift').capacity,
  set: (answers, capacity) => withMeans(answers, 'forklift', { capacity }),
});
