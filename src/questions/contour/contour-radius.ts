import type { Uncertain } from '../answers.ts';
import { aboutPart } from '../declare.ts';
import { NOT_SURE } from '../ranges.ts';
import { mayContour } from './moving.ts';

/** Radius of the tightest curve that is followed. */
export const contourRadius = aboutPart<Uncertain>({
  id: 'contour-radius',
  section: 'contour',
  title: 'Tightest curve',
  path: 'parts.contour.radius',
  ask: ({ part }) => `What is the radius of the tightest curve on ${part}?`,
  hint: 'Of the curve that the tool tip follows. Example: 20 mm.',
  hintInch: 'Of the curve that the tool tip follows. Example: 0.75 in.',
  why: 'The tighter the curve, the faster the rotary turns and the shorter the steps of the program.',
  readBy: ['rotary-speed', 'look-ahead'],
  field: { kind: 'quantity', of: 'length', limits: { above: 0, most: 5000 } },
  unsure: { as: 'range', range: NOT_SURE['parts.contour.radius'] },
  applies: mayContour,
  get: (part) => part.contour.radius,
  set: (part, radius) => ({ ...part, contour: { ...part.contour, radius } }),
});
