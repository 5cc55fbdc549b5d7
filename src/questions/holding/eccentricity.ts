import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { needsTilt } from '../parts/needs-tilt.ts';
import { NOT_SURE } from '../ranges.ts';

/** How far off center the part is held. */
export const eccentricity = aboutPart<Uncertain>({
  id: 'eccentricity',
  section: 'holding',
  title: 'Off center',
  path: 'parts.eccentricity',
  ask: ({ part }) => `How far off the center of the rotary does ${part} sit?`,
  hint: 'The distance from the middle of the part to the axis that it turns on. Centered is 0.',
  why: 'Off center it swings wider, and its weight tries to turn the rotary.',
  readBy: ['swing', 'brake-rotary', 'tilt-moment', 'inertia'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 2000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.eccentricity'] },
  preset: { value: 0, words: 'centered' },
  applies: needsTilt,
  get: (part) => part.eccentricity,
  set: (part, eccentricity) => ({ ...part, eccentricity }),
});
