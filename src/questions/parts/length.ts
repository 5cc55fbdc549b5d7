import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Length of a round part along its axis. */
export const length = aboutPart<Uncertain>({
  id: 'length',
  section: 'parts',
  title: 'Length',
  path: 'parts.length',
  ask: ({ part }) => `How long is ${part} along its axis?`,
  hint: 'The axis is the line through the middle of the circle. A disc is short, a shaft is long. Example: 120 mm.',
  hintInch:
    'The axis is the line through the middle of the circle. A disc is short, a shaft is long. Example: 4 3/4 in.',
  why: 'It sets how far the part reaches up or out: spindle height, travel, and whether it needs a tailstock.',
  readBy: ['tilt-swing', 'reach-high', 'index-clear', 'tailstock', 'payload'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.length'] },
  applies: (part) => part.shape !== 'block',
  get: (part) => part.length,
  set: (part, length) => ({ ...part, length }),
});
