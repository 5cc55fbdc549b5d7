import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { inCurrency } from './in-currency.ts';

/** Training and software. */
export const training = aboutShop<Uncertain>({
  id: 'training',
  section: 'money',
  title: 'Training and software',
  path: 'money.training',
  ask: (about) => `What do you set aside for training and CAM software${inCurrency(about)}?`,
  hint: 'Example: 3000.',
  why: 'It is paid once and belongs to what has to come back.',
  readBy: ['budget', 'payback', 'netPresentValue'],
  field: { kind: 'quantity', of: 'money', limits: { least: 0, most: 1e9 } },
  unsure: { as: 'range', range: NOT_SURE['money.training'] },
  get: (answers) => answers.money.training,
  set: (answers, training) => ({ ...answers, money: { ...answers.money, training } }),
});
