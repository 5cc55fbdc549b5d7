import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { mayBeCutFrom } from './needs-tilt.ts';

/** How far the tool goes in from the side. */
export const depthSide = aboutPart<Uncertain>({
  id: 'depth-side',
  section: 'parts',
  title: 'Depth from the sides',
  path: 'parts.depthSide',
  ask: ({ part }) => `How deep does the tool go into ${part} from the sides?`,
  hint: 'From the side face in to the bottom of the deepest pocket or hole. Example: 20 mm.',
  hintInch: 'From the side face in to the bottom of the deepest pocket or hole. Example: 3/4 in.',
  why: 'With the part tilted on its side the spindle has to come down that far, past fixture and table.',
  readBy: ['reach-low', 'tool-length'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.depthSide'] },
  applies: (part) => mayBeCutFrom(part, ['sides', 'around']),
  get: (part) => part.depthSide,
  set: (part, depthSide) => ({ ...part, depthSide }),
});
