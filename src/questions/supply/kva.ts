import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Connected load that is free. */
export const kVA = aboutShop<Uncertain>({
  id: 'kva',
  section: 'supply',
  title: 'Free power',
  path: 'shop.power.kVA',
  ask: () => 'How many kVA of the electric supply are free for the machine?',
  hint: "What stands on the plate of the supply, or the electrician's word, less what runs at the same time. Three phases of 400 V with 63 A are 44 kVA, one of 230 V with 32 A is 7.4 kVA. Only a licensed electrician connects it.",
  why: 'Spindle, pumps and axes together must not draw more than the supply gives, or fuses blow in the middle of a cut.',
  readBy: ['power'],
  field: { kind: 'quantity', of: 'apparentPower', limits: { above: 0, most: 1e5 } },
  unsure: { as: 'range', range: NOT_SURE['shop.power.kVA'] },
  get: (answers) => answers.shop.power.kVA,
  set: (answers, kVA) => ({ ...answers, shop: { ...answers.shop, power: { ...answers.shop.power, kVA } } }),
});
