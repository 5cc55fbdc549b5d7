import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { inCurrency } from './in-currency.ts';

/** What all of it may cost. */
export const budget = aboutShop<Uncertain>({
  id: 'budget',
  section: 'money',
  title: 'Budget',
  path: 'money.budget',
  ask: (about) => `How much may all of it cost${inCurrency(about)}?`,
  hint: 'Machine, rotary, drives, plates, options, rigging and training together. Example: 180000.',
  why: 'What costs more is out, and says by how much.',
  readBy: ['budget', 'price'],
  field: { kind: 'quantity', of: 'money', limits: { least: 0, most: 1e9 } },
  unsure: { as: 'range', range: NOT_SURE['money.budget'] },
  get: (answers) => answers.money.budget,
  set: (answers, budget) => ({
    ...answers,
    money: { ...answers.money, budget },
  }),
});
