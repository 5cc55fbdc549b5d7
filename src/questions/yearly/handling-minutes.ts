import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Minutes to clamp one piece and take it off again. */
export const handlingMinutes = aboutPart<Uncertain>({
  id: 'handling-minutes',
  section: 'yearly',
  title: 'Handling minutes',
  path: 'parts.yearly.handlingMinutes',
  ask: ({ part }) => `How many minutes does it take to clamp one piece of ${part} and take it off again?`,
  hint: 'For one setup. Example: 3.',
  why: 'Every setup that falls away saves it on every piece.',
  readBy: ['coverage', 'payback'],
  field: { kind: 'quantity', of: 'minutes', limits: { least: 0, most: 10000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.yearly.handlingMinutes'] },
  get: (part) => part.yearly.handlingMinutes,
  set: (part, handlingMinutes) => ({
    ...part,
    yearly: { ...part.yearly, handlingMinutes },
  }),
});
