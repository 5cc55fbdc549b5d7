import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { needsTilt } from '../parts/needs-tilt.ts';
import { NOT_SURE } from '../ranges.ts';

/** How high the part stands above the faceplate. */
export const fixtureHeight = aboutPart<Uncertain>({
  id: 'fixture-height',
  section: 'holding',
  title: 'Height of what holds it',
  path: 'parts.holding.height',
  ask: ({ part }) => `How high above the faceplate does ${part} stand on what holds it?`,
  hint: 'From the table of the rotary up to the underside of the part. Example: 40 mm.',
  hintInch: 'From the table of the rotary up to the underside of the part. Example: 1.5 in.',
  why: 'Height lifts the part toward the spindle and out from the tilt axis; too little brings the nose into the table.',
  readBy: ['tilt-swing', 'tilt-moment', 'reach-high', 'tool-length'],
  field: { kind: 'quantity', of: 'length', limits: { least: 0, most: 2000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.holding.height'] },
  applies: needsTilt,
  get: (part) => part.holding.height,
  set: (part, height) => ({ ...part, holding: { ...part.holding, height } }),
});
