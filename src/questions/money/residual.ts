import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { inCurrency } from './in-currency.ts';

/** What it is worth at the end. */
export const residual = aboutShop<Uncertain>({
  id: 'residual',
  section: 'money',
  title: 'Worth at the end',
  path: 'money.residual',
  ask: (about) => `What will all of it still be worth after the years that you look at${inCurrency(about)}?`,
  hint: 'What somebody would pay for it then; nothing is 0. Example: 30000.',
  why: 'What it can be sold for comes back.',
  readBy: ['netPresentValue'],
  field: { kind: 'quantity', of: 'money', limits: { least: 0, most: 1e9 } },
  unsure: { as: 'computed', words: 'anything from nothing to what was paid for it' },
  get: (answers) => answers.money.residual,
  set: (answers, residual) => ({ ...answers, money: { ...answers.money, residual } }),
});
