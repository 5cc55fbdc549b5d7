import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Interest a year. */
export const interest = aboutShop<Uncertain>({
  id: 'interest',
  section: 'money',
  title: 'Interest',
  path: 'money.interest',
  ask: () => 'What interest do you pay, or could you get, in a year?',
  hint: 'Example: 6 %.',
  why: 'Money that comes in next year is worth less than money now.',
  readBy: ['netPresentValue'],
  field: { kind: 'quantity', of: 'share', limits: { least: 0, most: 1 } },
  unsure: { as: 'range', range: NOT_SURE['money.interest'] },
  get: (answers) => answers.money.interest,
  set: (answers, interest) => ({ ...answers, money: { ...answers.money, interest } }),
});
