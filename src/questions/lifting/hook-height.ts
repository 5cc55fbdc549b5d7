import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** Highest place of the hook. */
export const hookHeight = aboutShop<Uncertain>({
  id: 'hook-height',
  section: 'lifting',
  title: 'Hook height',
  path: 'shop.lifting.hoist.hookHeight',
  ask: () => 'How high above the floor does the hook come, over the machine table?',
  hint: 'With the hoist drawn up as far as it goes. Example: 2600 mm.',
  hintInch: 'With the hoist drawn up as far as it goes. Example: 102 in, or 8 ft 6 in.',
  why: 'The rotary hangs below the hook and has to come over the sill of the door and the edge of the table.',
  readBy: ['hook-height'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 1e5 } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.hoist.hookHeight'] },
  applies: (answers) => hasMeans(answers, 'hoist'),
  get: (answers) => meansBy(answers, 'hoist').hookHeight,
  set: (answers, hookHeight) => withMeans(answers, 'hoist', { hookHeight }),
});
