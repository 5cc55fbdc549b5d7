import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { inCurrency } from './in-currency.ts';

const USUAL = '900, an assumption';

/** A plate under the rotary or the vises. */
export const platePrice = aboutShop<Uncertain>({
  id: 'plate-price',
  section: 'money',
  title: 'Price of a plate',
  path: 'money.plates',
  ask: (about) => `What does a plate under the rotary or a vise cost you, each${inCurrency(about)}?`,
  hint: 'Ground, with bolt holes and slots. Example: 900.',
  why: 'Plates make a rotary fit the slots of a table and the height of its spindle, and some arrangements need several.',
  readBy: ['price', 'budget'],
  field: { kind: 'quantity', of: 'money', limits: { least: 0, most: 1e9 } },
  unsure: { as: 'computed', words: USUAL },
  preset: { value: 'unknown', words: USUAL },
  get: (answers) => answers.money.plates,
  set: (answers, plates) => ({ ...answers, money: { ...answers.money, plates } }),
});
