import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';

/** Diameter of a round part. */
export const diameter = aboutPart<Uncertain>({
  id: 'diameter',
  section: 'parts',
  title: 'Diameter',
  path: 'parts.diameter',
  ask: ({ part }) => `What is the largest diameter of ${part}?`,
  hint: 'Example: 80 mm.',
  hintInch: 'Example: 3 1/8 in.',
  why: 'It is what has to turn freely over the rotary, and what has to go into a chuck or a collet.',
  readBy: ['swing', 'faceplate', 'collet', 'tilt-swing'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.diameter'] },
  applies: (part) => part.shape !== 'block',
  get: (part) => part.diameter,
  set: (part, diameter) => ({ ...part, diameter }),
});
