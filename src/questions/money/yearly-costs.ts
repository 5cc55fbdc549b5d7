import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { inCurrency } from './in-currency.ts';

/** What it costs every year. */
export const yearlyCosts = aboutShop<Uncertain>({
  id: 'yearly-costs',
  section: 'money',
  title: 'Costs a year',
  path: 'money.yearlyCosts',
  ask: (about) => `What will it cost to keep it running, each year${inCurrency(about)}?`,
  hint: 'Service, maintenance of the software, insurance. Example: 2500.',
  why: 'It comes off what is gained each year.',
  readBy: ['payback', 'netPresentValue'],
  field: { kind: 'quantity', of: 'money', limits: { least: 0, most: 1e9 } },
  unsure: { as: 'range', range: NOT_SURE['money.yearlyCosts'] },
  get: (answers) => answers.money.yearlyCosts,
  set: (answers, yearlyCosts) => ({ ...answers, money: { ...answers.money, yearlyCosts } }),
});
