import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Pieces in a year. */
export const yearlyQuantity = aboutPart<Uncertain>({
  id: 'yearly-quantity',
  section: 'yearly',
  title: 'Pieces a year',
  path: 'parts.yearly.quantity',
  ask: ({ part }) => `How many pieces of ${part} do you make in a year?`,
  hint: 'A round number is good enough. Example: 400.',
  why: 'Parts that take many hours count more than parts that take few.',
  readBy: ['coverage', 'envelope', 'payback'],
  field: {
    kind: 'quantity',
    of: 'count',
    limits: { least: 0, most: 10000000 },
  },
  unsure: { as: 'range', range: NOT_SURE['parts.yearly.quantity'] },
  get: (part) => part.yearly.quantity,
  set: (part, quantity) => ({ ...part, yearly: { ...part.yearly, quantity } }),
});
