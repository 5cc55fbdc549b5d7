import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** What the compressor gives. */
export const airFlow = aboutShop<Uncertain>({
  id: 'air-flow',
  section: 'supply',
  title: 'Compressed air',
  path: 'shop.air.flow',
  ask: () => 'How much compressed air is there for the machine?',
  hint: 'What the plate of the compressor says that it delivers, less what others take; none is 0. Example: 300 L/min.',
  hintInch:
    'What the plate of the compressor says that it delivers, less what others take; none is 0. Example: 11 cfm.',
  why: 'Tool changers, seals and brakes of rotaries work with air, and stop where there is too little of it.',
  readBy: ['air'],
  field: { kind: 'quantity', of: 'airFlow', limits: { least: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.air.flow'] },
  get: (answers) => answers.shop.air.flow,
  set: (answers, flow) => ({ ...answers, shop: { ...answers.shop, air: { ...answers.shop.air, flow } } }),
});
