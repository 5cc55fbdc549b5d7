import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Minutes of cutting on one piece, all setups together. */
export const cycleMinutes = aboutPart<Uncertain>({
  id: 'cycle-minutes',
  section: 'yearly',
  title: 'Cycle minutes',
  path: 'parts.yearly.cycleMinutes',
  ask: ({ part }) => `How many minutes does the machine cut on one piece of ${part}?`,
  hint: 'All setups together. Example: 18.',
  why: 'With the pieces a year it gives the hours that the part is worth.',
  readBy: ['coverage', 'payback'],
  field: {
    kind: 'quantity',
    of: 'minutes',
    limits: { least: 0, most: 100000 },
  },
  unsure: { as: 'range', range: NOT_SURE['parts.yearly.cycleMinutes'] },
  get: (part) => part.yearly.cycleMinutes,
  set: (part, cycleMinutes) => ({
    ...part,
    yearly: { ...part.yearly, cycleMinutes },
  }),
});
