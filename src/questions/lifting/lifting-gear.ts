import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** Mass of what hangs on the hoist besides the load. */
export const liftingGear = aboutShop<Uncertain>({
  id: 'lifting-gear',
  section: 'lifting',
  title: 'Weight of the lifting gear',
  path: 'shop.lifting.hoist.rigging',
  ask: () => 'How heavy are sling, shackles and hook block together?',
  hint: 'Example: 10 kg.',
  hintInch: 'Example: 20 lb.',
  why: 'It hangs on the hoist too, and comes off what the hoist may lift.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'mass', limits: { least: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.hoist.rigging'] },
  applies: (answers) => hasMeans(answers, 'hoist'),
  get: (answers) => meansBy(answers, 'hoist').rigging,
  set: (answers, rigging) => withMeans(answers, 'hoist', { rigging }),
});
