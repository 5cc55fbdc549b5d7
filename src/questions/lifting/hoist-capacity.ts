import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** What the hoist may lift. */
export const hoistCapacity = aboutShop<Uncertain>({
  id: 'hoist-capacity',
  section: 'lifting',
  title: 'Hoist capacity',
  path: 'shop.lifting.hoist.capacity',
  ask: () => 'How much may the hoist lift?',
  hint: 'The least of what stands on hoist, beam and hook. Example: 500 kg.',
  hintInch: 'The least of what stands on hoist, beam and hook. Example: 1000 lb.',
  why: 'The rotary with its plate and all that it hangs on must not weigh more.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'mass', limits: { above: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.hoist.capacity'] },
  applies: (answers) => hasMeans(answers, 'hoist'),
  get: (answers) => meansBy(answers, 'hoist').capacity,
  set: (answers, capacity) => withMeans(answers, 'hoist', { capacity }),
});
