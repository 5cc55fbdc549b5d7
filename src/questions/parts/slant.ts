import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { anglesOf, withAngles } from './angles.ts';

/** How far from straight down the tool leans. */
export const slant = aboutPart<readonly Uncertain[] | 'unknown'>({
  id: 'slant',
  section: 'parts',
  title: 'Slant angle',
  path: 'parts.slant',
  ask: ({ part }) => `At which angle does the tool come in on the slant of ${part}?`,
  hint: 'Measured from straight down: 0 would be the top, 90 the side. Several angles with commas. Example: 35, or 30, 45.',
  why: 'The rotary has to tilt that far, and the spindle has to reach the slanted face.',
  readBy: ['tilt-range', 'reach-high', 'reach-low'],
  field: {
    kind: 'quantities',
    of: 'angle',
    limits: { least: 1, most: 89 },
    names: null,
  },
  unsure: { as: 'range', range: NOT_SURE['parts.slant'] },
  applies: (part) => anglesOf(part, 'slant').length > 0,
  get: (part) => anglesOf(part, 'slant'),
  set: (part, angles) => withAngles(part, 'slant', angles === 'unknown' ? ['unknown'] : angles),
});
