import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** How wide the way in is. */
export const doorwayWidth = aboutShop<Uncertain>({
  id: 'doorway-width',
  section: 'building',
  title: 'Doorway width',
  path: 'shop.doorway.width',
  ask: () => 'How wide is the narrowest place on the way in?',
  hint: 'Every door, corridor and corner from the truck to its place counts, as wide as it opens. Example: 2400 mm.',
  hintInch:
    'Every door, corridor and corner from the truck to its place counts, as wide as it opens. Example: 94 in, or 7 ft 10 in.',
  why: 'A machine that does not come in through the door cannot be bought, whatever else speaks for it.',
  readBy: ['doorway'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.doorway.width'] },
  get: (answers) => answers.shop.doorway.width,
  set: (answers, width) => ({
    ...answers,
    shop: { ...answers.shop, doorway: { ...answers.shop.doorway, width } },
  }),
});
