import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** Height of the sling. */
export const slingHeight = aboutShop<Uncertain>({
  id: 'sling-height',
  section: 'lifting',
  title: 'Height of the sling',
  path: 'shop.lifting.hoist.slingHeight',
  ask: () => 'How far below the hook does the top of the rotary hang?',
  hint: 'The height of sling and shackles. Example: 500 mm.',
  hintInch: 'The height of sling and shackles. Example: 20 in.',
  why: 'The hook has to come up by this much more.',
  readBy: ['hook-height'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 1e5 } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.hoist.slingHeight'] },
  applies: (answers) => hasMeans(answers, 'hoist'),
  get: (answers) => meansBy(answers, 'hoist').slingHeight,
  set: (answers, slingHeight) => withMeans(answers, 'hoist', { slingHeight }),
});
