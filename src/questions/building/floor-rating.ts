import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** What the floor may carry. */
export const floorRating = aboutShop<Uncertain>({
  id: 'floor-rating',
  section: 'building',
  title: 'Floor rating',
  path: 'shop.floorRating',
  ask: ({ units }) => `How much may the floor carry on each square ${units === 'inch' ? 'foot' : 'meter'}?`,
  hint: 'It is in the papers of the building. Example: 25 kPa, or 2500 kg/m². A structural engineer knows, and decides it in any case.',
  hintInch:
    'It is in the papers of the building. Example: 500 psf. A structural engineer knows, and decides it in any case.',
  why: 'Machine, rotary and work stand on a few feet; a floor that gives way or cracks puts people at risk and the machine out of true.',
  readBy: ['floor-load'],
  field: { kind: 'quantity', of: 'floorLoad', limits: { above: 0, most: 1e5 } },
  unsure: { as: 'range', range: NOT_SURE['shop.floorRating'] },
  get: (answers) => answers.shop.floorRating,
  set: (answers, floorRating) => ({ ...answers, shop: { ...answers.shop, floorRating } }),
});
