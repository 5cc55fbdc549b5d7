import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** How often a year it is set up. */
export const yearlyLots = aboutPart<Uncertain>({
  id: 'yearly-lots',
  section: 'yearly',
  title: 'Lots a year',
  path: 'parts.yearly.lots',
  ask: ({ part }) => `In how many lots do you make ${part} in a year?`,
  hint: 'How often in a year you set up for this part. Example: 12, once a month.',
  why: 'Each lot is set up anew, and that is where a rotary saves most.',
  readBy: ['coverage', 'payback'],
  field: { kind: 'quantity', of: 'count', limits: { least: 0, most: 100000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.yearly.lots'] },
  get: (part) => part.yearly.lots,
  set: (part, lots) => ({ ...part, yearly: { ...part.yearly, lots } }),
});
