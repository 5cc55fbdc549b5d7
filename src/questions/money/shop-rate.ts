import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { inCurrency } from './in-currency.ts';

/** What an hour is worth. */
export const shopRate = aboutShop<Uncertain>({
  id: 'shop-rate',
  section: 'money',
  title: 'Shop rate',
  path: 'money.shopRate',
  ask: (about) => `What is an hour of the machine, with somebody at it, worth to you${inCurrency(about)}?`,
  hint: 'What you can sell it for, not what it costs. Example: 70.',
  why: 'Hours that are saved are worth what they can be sold for.',
  readBy: ['payback', 'netPresentValue'],
  field: { kind: 'quantity', of: 'money', limits: { least: 0, most: 1e9 } },
  unsure: { as: 'range', range: NOT_SURE['money.shopRate'] },
  get: (answers) => answers.money.shopRate,
  set: (answers, shopRate) => ({ ...answers, money: { ...answers.money, shopRate } }),
});
