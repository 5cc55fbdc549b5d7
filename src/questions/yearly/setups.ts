import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** How often one piece is clamped until it is done. */
export const setups = aboutPart<Uncertain>({
  id: 'setups',
  section: 'yearly',
  title: 'Setups',
  path: 'parts.yearly.setups',
  ask: ({ part }) => `How many setups does one piece of ${part} take today?`,
  hint: 'How often it is clamped anew until it is done. Example: 4.',
  why: 'Fewer setups is what a rotary is bought for.',
  readBy: ['coverage', 'payback'],
  field: { kind: 'quantity', of: 'count', limits: { least: 0, most: 100 } },
  unsure: { as: 'range', range: NOT_SURE['parts.yearly.setups'] },
  get: (part) => part.yearly.setups,
  set: (part, setups) => ({ ...part, yearly: { ...part.yearly, setups } }),
});
