import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { mayBeCutFrom, needsTilt } from './needs-tilt.ts';

/** How far the tool goes down from the top. */
export const depthTop = aboutPart<Uncertain>({
  id: 'depth-top',
  section: 'parts',
  title: 'Depth from the top',
  path: 'parts.depthTop',
  ask: ({ part }) => `How deep does the tool go into ${part} from the top?`,
  hint: 'From the top face down to the bottom of the deepest pocket or hole. Example: 30 mm.',
  hintInch: 'From the top face down to the bottom of the deepest pocket or hole. Example: 1 1/4 in.',
  why: 'The spindle has to come down that far without the shortest tool running out.',
  readBy: ['reach-low', 'reach-high'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.depthTop'] },
  applies: (part) => needsTilt(part) && mayBeCutFrom(part, ['top']),
  get: (part) => part.depthTop,
  set: (part, depthTop) => ({ ...part, depthTop }),
});
