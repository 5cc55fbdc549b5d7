import type { Uncertain } from '../answers.ts';
import { aboutShop } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Lowest thing above the machine. */
export const ceiling = aboutShop<Uncertain>({
  id: 'ceiling',
  section: 'building',
  title: 'Ceiling',
  path: 'shop.ceiling',
  ask: () =>
    'How high above the floor is the lowest thing over the machine: a beam, a lamp, a pipe, or the ceiling?',
  hint: 'Example: 3600 mm, or 3.6 m.',
  hintInch: 'Example: 142 in, or 11 ft 10 in.',
  why: 'The machine has to stand up under it, and what is put in to lift its head for tall work makes it higher still.',
  readBy: ['ceiling'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 1e6 } },
  unsure: { as: 'range', range: NOT_SURE['shop.ceiling'] },
  get: (answers) => answers.shop.ceiling,
  set: (answers, ceiling) => ({ ...answers, shop: { ...answers.shop, ceiling } }),
});
