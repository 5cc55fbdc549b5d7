import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { needsTilt } from '../parts/needs-tilt.ts';
import { NOT_SURE } from '../ranges.ts';

/** How heavy the fixture, vise or chuck is. */
export const fixtureMass = aboutPart<Uncertain>({
  id: 'fixture-mass',
  section: 'holding',
  title: 'Mass of what holds it',
  path: 'parts.holding.mass',
  ask: ({ part }) => `How heavy is what holds ${part}?`,
  hint: 'The fixture, vise or chuck without the part. Example: 4 kg.',
  hintInch: 'The fixture, vise or chuck without the part. Example: 9 lb.',
  why: 'A rotary carries fixture and part together, and often less when it is tilted.',
  readBy: ['payload', 'tilt-moment', 'table-load', 'inertia'],
  field: { kind: 'quantity', of: 'mass', limits: { least: 0, most: 20000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.holding.mass'] },
  applies: needsTilt,
  get: (part) => part.holding.mass,
  set: (part, mass) => ({ ...part, holding: { ...part.holding, mass } }),
});
