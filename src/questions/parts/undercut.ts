import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { anglesOf, withAngles } from './angles.ts';

/** How far past level the tool leans. */
export const undercut = aboutPart<readonly Uncertain[] | 'unknown'>({
  id: 'undercut',
  section: 'parts',
  title: 'Undercut angle',
  path: 'parts.undercut',
  ask: ({ part }) => `How far past level does the tool come in under ${part}?`,
  hint: 'Measured from straight down: 90 is level, more than 90 is from below. Several angles with commas. Example: 100.',
  why: 'Only some rotaries tilt past level, and the fixture must not be in the way of the tool.',
  readBy: ['tilt-range', 'tool-length', 'reach-low'],
  field: {
    kind: 'quantities',
    of: 'angle',
    limits: { least: 91, most: 150 },
    names: null,
  },
  unsure: { as: 'range', range: NOT_SURE['parts.undercut'] },
  applies: (part) => anglesOf(part, 'undercut').length > 0,
  get: (part) => anglesOf(part, 'undercut'),
  set: (part, angles) => withAngles(part, 'undercut', angles === 'unknown' ? ['unknown'] : angles),
});
