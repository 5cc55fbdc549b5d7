import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { needsTilt } from './needs-tilt.ts';

/** The tightest plus-minus tolerance from one face to another. */
export const tolerance = aboutPart<Uncertain>({
  id: 'tolerance',
  section: 'parts',
  title: 'Tolerance',
  path: 'parts.tolerance',
  ask: ({ part }) =>
    `What is the tightest tolerance between faces of ${part} that are cut from different sides?`,
  hint: 'As plus-minus: 0.05 mm means that it may be 0.05 mm more or less.',
  hintInch: 'As plus-minus: 0.002 in means that it may be 0.002 in more or less.',
  why: 'Every turn of the rotary adds its error at the distance of the face from the axis.',
  readBy: ['index-accuracy'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 10 } },
  unsure: { as: 'range', range: NOT_SURE['parts.tolerance'] },
  applies: needsTilt,
  get: (part) => part.tolerance,
  set: (part, tolerance) => ({ ...part, tolerance }),
});
