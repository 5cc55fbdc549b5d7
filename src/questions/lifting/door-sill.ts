import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { hasMeans } from './means.ts';

/** Sill of the machine door above the floor. */
export const doorSill = aboutShop<Uncertain>({
  id: 'door-sill',
  section: 'lifting',
  title: 'Door sill',
  path: 'shop.doorSill',
  ask: () => 'How high above the floor is the edge of the machine door that a rotary is lifted over?',
  hint: 'Of a machine that is not there yet it is in the drawing that the seller gives out. Example: 1100 mm.',
  hintInch:
    'Of a machine that is not there yet it is in the drawing that the seller gives out. Example: 43 in.',
  why: 'The rotary has to be lifted over it, hanging from the hook.',
  readBy: ['hook-height'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.doorSill'] },
  applies: (answers) => hasMeans(answers, 'hoist'),
  get: (answers) => answers.shop.doorSill,
  set: (answers, doorSill) => ({ ...answers, shop: { ...answers.shop, doorSill } }),
});
