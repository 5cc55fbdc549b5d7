import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Years to reckon with. */
export const years = aboutShop<Uncertain>({
  id: 'years',
  section: 'money',
  title: 'Years to look at',
  path: 'money.years',
  ask: () => 'Over how many years should it pay?',
  hint: 'Example: 5.',
  why: 'What comes in later counts less, and what comes in after these years does not count.',
  readBy: ['netPresentValue'],
  field: { kind: 'quantity', of: 'years', limits: { above: 0, most: 100 } },
  unsure: { as: 'range', range: NOT_SURE['money.years'] },
  get: (answers) => answers.money.years,
  set: (answers, years) => ({ ...answers, money: { ...answers.money, years } }),
});
