import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { inCurrency } from './in-currency.ts';

/** Bringing it in and setting it up. */
export const riggingPrice = aboutShop<Uncertain>({
  id: 'rigging-price',
  section: 'money',
  title: 'Bringing it in',
  path: 'money.rigging',
  ask: (about) => `What will it cost to bring it in, set it up and connect it${inCurrency(about)}?`,
  hint: 'Transport, riggers, electrician; a quote of licensed trades is better than a guess. Example: 4000.',
  why: 'It is paid once and belongs to what has to come back.',
  readBy: ['budget', 'payback', 'netPresentValue'],
  field: { kind: 'quantity', of: 'money', limits: { least: 0, most: 1e9 } },
  unsure: { as: 'range', range: NOT_SURE['money.rigging'] },
  get: (answers) => answers.money.rigging,
  set: (answers, rigging) => ({ ...answers, money: { ...answers.money, rigging } }),
});
