import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Its pressure. */
export const airPressure = aboutShop<Uncertain>({
  id: 'air-pressure',
  section: 'supply',
  title: 'Air pressure',
  path: 'shop.air.bar',
  ask: () => 'At which pressure does compressed air arrive at the machine?',
  hint: 'As on the gauge at the end of the pipe. Example: 7 bar.',
  hintInch: 'As on the gauge at the end of the pipe. Example: 100 psi.',
  why: 'A brake that is held by air holds less where the pressure is less.',
  readBy: ['air'],
  field: { kind: 'quantity', of: 'pressure', limits: { least: 0, most: 1000 } },
  unsure: { as: 'range', range: NOT_SURE['shop.air.bar'] },
  applies: (answers) => answers.shop.air.flow !== 0,
  get: (answers) => answers.shop.air.bar,
  set: (answers, bar) => ({ ...answers, shop: { ...answers.shop, air: { ...answers.shop.air, bar } } }),
});
