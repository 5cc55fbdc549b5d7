import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { needsTilt } from '../parts/needs-tilt.ts';
import { NOT_SURE } from '../ranges.ts';

/** How far fixture or vise reach round the axis. */
export const fixtureDiameter = aboutPart<Uncertain>({
  id: 'fixture-diameter',
  section: 'holding',
  title: 'Width of what holds it',
  path: 'parts.holding.diameter',
  ask: ({ part }) => `How wide is the fixture, vise, chuck or collet that holds ${part}, across its corners?`,
  hint: 'The circle that it turns in. Of a rectangle it is the diagonal: 80 x 60 mm gives 100 mm. Of a chuck or a collet it is the outside.',
  hintInch:
    'Of a rectangle it is the diagonal: 3 x 4 in gives 5 in. Of a chuck or a collet it is the outside.',
  why: 'A fixture that is wider than the part is what has to turn freely.',
  readBy: ['swing', 'tilt-swing', 'tool-length'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.holding.diameter'] },
  applies: needsTilt,
  get: (part) => part.holding.diameter,
  set: (part, diameter) => ({
    ...part,
    holding: { ...part.holding, diameter },
  }),
});
