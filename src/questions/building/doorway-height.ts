import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** How high the way in is. */
export const doorwayHeight = aboutShop<Uncertain>({
  id: 'doorway-height',
  section: 'building',
  title: 'Doorway height',
  path: 'shop.doorway.height',
  ask: () => 'How high is the lowest place on the way in?',
  hint: 'From the floor to the lowest thing over the way, a lintel or a pipe. Example: 2900 mm.',
  hintInch:
    'From the floor to the lowest thing over the way, a lintel or a pipe. Example: 114 in, or 9 ft 6 in.',
  why: 'A machine comes in standing on its skates, and is never laid down.',
  readBy: ['doorway'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.doorway.height'] },
  get: (answers) => answers.shop.doorway.height,
  set: (answers, height) => ({
    ...answers,
    shop: { ...answers.shop, doorway: { ...answers.shop.doorway, height } },
  }),
});
