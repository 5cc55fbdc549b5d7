import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { anglesOf } from './angles.ts';
import { mayBeCutFrom } from './needs-tilt.ts';

/** How close to the fixture the tool has to work on the sides. */
export const lowestSideFeature = aboutPart<Uncertain>({
  id: 'lowest-side-feature',
  section: 'parts',
  title: 'Lowest cut on a side',
  path: 'parts.lowestSideFeature',
  ask: ({ part }) => `How far above its fixture is the lowest cut on the sides of ${part}?`,
  hint: 'If a side is cut all the way down, answer 0.',
  why: 'Close to the faceplate the spindle nose needs a long tool or a raised fixture to keep clear.',
  readBy: ['tool-length'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.lowestSideFeature'] },
  applies: (part) => mayBeCutFrom(part, ['sides', 'around']) || anglesOf(part, 'undercut').length > 0,
  get: (part) => part.lowestSideFeature,
  set: (part, lowestSideFeature) => ({ ...part, lowestSideFeature }),
});
