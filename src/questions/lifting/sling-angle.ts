import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans, meansBy, withMeans } from './means.ts';

/** How steep the legs hang. */
export const slingAngle = aboutShop<Uncertain>({
  id: 'sling-angle',
  section: 'lifting',
  title: 'Angle of the sling',
  path: 'shop.lifting.hoist.slingAngle',
  ask: () => 'How steep do the legs of the sling hang, measured from level?',
  hint: 'Straight down is 90. The flatter they hang the harder they pull; a rigger says how flat is allowed. Example: 60.',
  why: 'At 30 degrees each leg pulls twice as hard as at 90, and the eye bolts are pulled sideways.',
  readBy: ['lift'],
  field: { kind: 'quantity', of: 'angle', limits: { above: 0, most: 90 } },
  unsure: { as: 'range', range: NOT_SURE['shop.lifting.hoist.slingAngle'] },
  applies: (answers) => hasMeans(answers, 'hoist') && meansBy(answers, 'hoist').legs !== 1,
  get: (answers) => meansBy(answers, 'hoist').slingAngle,
  set: (answers, slingAngle) => withMeans(answers, 'hoist', { slingAngle }),
});
