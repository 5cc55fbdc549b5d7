import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Voltage of the supply. */
export const volts = aboutShop<Uncertain>({
  id: 'volts',
  section: 'supply',
  title: 'Voltage',
  path: 'shop.power.volts',
  ask: () => 'How many volts does the electric supply for the machine have?',
  hint: 'As on its plate; of three phases, between two of them. Example: 400 V, or 480 V.',
  why: 'A machine made for another voltage needs a transformer, which costs money and floor.',
  readBy: ['power'],
  field: { kind: 'quantity', of: 'voltage', limits: { above: 0, most: 1e5 } },
  unsure: { as: 'range', range: NOT_SURE['shop.power.volts'] },
  get: (answers) => answers.shop.power.volts,
  set: (answers, volts) => ({
    ...answers,
    shop: { ...answers.shop, power: { ...answers.shop.power, volts } },
  }),
});
