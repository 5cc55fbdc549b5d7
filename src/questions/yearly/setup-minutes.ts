import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Minutes for one setup. */
export const setupMinutes = aboutPart<Uncertain>({
  id: 'setup-minutes',
  section: 'yearly',
  title: 'Minutes a setup',
  path: 'parts.yearly.setupMinutes',
  ask: ({ part }) => `How many minutes does it take to set up for one setup of ${part}?`,
  hint: 'Vise or fixture, tools, zero point, first piece. Example: 35, or 1.5 h.',
  why: 'Setup time saved is time for other work.',
  readBy: ['coverage', 'payback'],
  field: { kind: 'quantity', of: 'minutes', limits: { least: 0, most: 10000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.yearly.setupMinutes'] },
  get: (part) => part.yearly.setupMinutes,
  set: (part, setupMinutes) => ({
    ...part,
    yearly: { ...part.yearly, setupMinutes },
  }),
});
